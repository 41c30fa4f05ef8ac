/** `4.49`, `9/4` or `2 1/4` as a number above 0 or 0; nothing where it is none of these. */
export function amountOf(text: string): number | undefined {
  const [top, bottom, ...rest] = text.split('/');
  if (top === undefined || rest.length > 0) return undefined;
  if (bottom === undefined) return decimal(top);
  const under = decimal(bottom);
  if (under === undefined || under === 0) return undefined;
  const mixed = /^(\d+) (\d+)$/.exec(top);
  if (!mixed) {
    const over = decimal(top);
    return over === undefined ? undefined : over / under;
  }
  const [whole, over] = [Number(mixed[1]), Number(mixed[2])];
  return over < under ? whole + over / under : undefined;
}

/** Digits with one decimal mark, whichever it is, and the groups before it set off or not. */
function decimal(text: string): number | undefined {
  if (/^(\d+|\d*[.,]\d+)$/.test(text)) return Number(text.replace(',', '.'));
  const grouped =
    /^\d{1,3}(?:(?<mark>[ '])\d{3}(?:\k<mark>\d{3})*(?:[.,]\d+)?|(?:,\d{3})+\.\d+|(?:\.\d{3})+,\d+)$/.test(
      text,
    );
  if (!grouped) return undefined;
  const last = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
  const digits = (part: string): string => part.replace(/\D/g, '');
  return Number(last < 0 ? digits(text) : `${digits(text.slice(0, last))}.${text.slice(last + 1)}`);
}
