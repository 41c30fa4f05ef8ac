/**
 * What a reader makes of a formula with the numbers as shown: the little TeX of worked examples, computed. Angles are
 * in degrees, as on the page.
 */
export function byHand(tex: string): number {
  const parts = tex.match(/\\left\(|\\right\)|\\[a-z]+|−?\d[\d.]*|[^\s]/gi) ?? [];
  let at = 0;
  const peek = (): string => parts[at] ?? '';
  const take = (sign: string): boolean => {
    if (peek() !== sign) return false;
    at += 1;
    return true;
  };
  const group = (): number => {
    if (!take('{')) return atom();
    const value = sum();
    if (!take('}')) throw new Error(`no } in ${tex} at ${peek()}`);
    return value;
  };
  const degrees = (): boolean => {
    if (parts[at] !== '^' || parts[at + 1] !== '\\circ') return false;
    at += 2;
    return true;
  };
  const inRadians = (degree: number): number => (degree * Math.PI) / 180;
  const functions: Record<string, (x: number) => number> = {
    '\\tan': (x) => Math.tan(inRadians(x)),
    '\\sin': (x) => Math.sin(inRadians(x)),
    '\\cos': (x) => Math.cos(inRadians(x)),
    '\\cot': (x) => 1 / Math.tan(inRadians(x)),
    '\\arctan': (x) => (Math.atan(x) * 180) / Math.PI,
    '\\arcsin': (x) => (Math.asin(x) * 180) / Math.PI,
    '\\log': Math.log,
  };
  const atom = (): number => {
    const part = peek();
    at += 1;
    const of = functions[part];
    if (of) {
      const raised = parts[at] === '^' && parts[at + 1] === '2' ? ((at += 2), 2) : 1;
      return of(atom()) ** raised;
    }
    if (part === '\\frac') {
      const top = group();
      return top / group();
    }
    if (part === '\\sqrt') return Math.sqrt(group());
    if (part === '(' || part === '\\left(') {
      const value = sum();
      if (!take(')') && !take('\\right)')) throw new Error(`no ) in ${tex} at ${peek()}`);
      return value;
    }
    if (part === '{') {
      at -= 1;
      const value = group();
      degrees();
      return value;
    }
    if (part === '\\pi') return Math.PI;
    if (part === 'e') return Math.E;
    const value = Number(part.replace('−', '-'));
    if (part === '' || Number.isNaN(value)) throw new Error(`${part} is not understood in ${tex}`);
    degrees();
    return value;
  };
  const power = (): number => {
    const base = atom();
    return take('^') ? base ** group() : base;
  };
  const product = (): number => {
    let value = take('-') ? -power() : power();
    for (;;) {
      if (take('\\times') || functions[peek()]) value *= power();
      else if (take('\\div') || take('/')) value /= power();
      else return value;
    }
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (take('+')) value += product();
      else if (take('-')) value -= product();
      else return value;
    }
  };
  const value = sum();
  if (at < parts.length) throw new Error(`${tex} is not understood from ${peek()} on`);
  return value;
}
