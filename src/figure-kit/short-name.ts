/** A name cut to what a sheet has room for. */
export const shortName = (name: string, most: number): string =>
  name.length > most ? `${name.slice(0, most - 1)}…` : name;
