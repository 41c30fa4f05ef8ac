/** Copies a text; the sentence to say of it where the browser allows it, or what else to do. */
export async function copyText(text: string, copied: string, refused: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return copied;
  } catch {
    return refused;
  }
}
