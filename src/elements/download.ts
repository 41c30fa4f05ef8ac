/** Gives a text to the visitor as a file. */
export function download(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  // Some browsers read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
