/**
 * Keeps what packs a file for teachers' systems out of what every page fetches: the library packs links too, and is one
 * module, which otherwise comes whole with the first page that needs any of it.
 *
 * @returns {import('vite').Plugin}
 */
export function zipApart() {
  return {
    name: 'zip-apart',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (source !== 'fflate' || !importer?.includes('/src/teach/qti/')) return null;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && { ...found, id: `${found.id}?apart` };
    },
  };
}
