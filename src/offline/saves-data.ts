/** Some browsers tell that the reader pays for every byte. */
export function savesData(): boolean {
  const { connection } = navigator as Navigator & { connection?: { saveData?: boolean } };
  return connection?.saveData === true;
}
