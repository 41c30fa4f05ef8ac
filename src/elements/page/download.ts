/** Gives a text or a picture to the visitor as a file. */
export function download(name: string, content: BlobPart, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  // Some browsers read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
