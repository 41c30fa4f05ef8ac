/** Puts rows of plain text into the body of a table, the first cell of each as its head; what is in place is replaced. */
export function fillRows(
  table: Element | null,
  rows: readonly (readonly string[])[],
  finish: (row: HTMLTableRowElement, index: number) => void = () => undefined,
): void {
  const body = table?.querySelector('tbody');
  if (!body) return;
  body.replaceChildren(
    ...rows.map(([head = '', ...cells], index) => {
      const row = document.createElement('tr');
      const first = Object.assign(document.createElement('th'), { textContent: head });
      first.scope = 'row';
      row.append(
        first,
        ...cells.map((text) => Object.assign(document.createElement('td'), { textContent: text })),
      );
      finish(row, index);
      return row;
    }),
  );
}

/** The heads of the columns of a table, above rows whose own head stands first: that corner stays empty. */
export function fillHeads(table: Element | null, columns: readonly string[]): void {
  const heads = columns.slice(1).map((textContent) => {
    const head = Object.assign(document.createElement('th'), { textContent });
    head.scope = 'col';
    return head;
  });
  table?.querySelector('thead tr')?.replaceChildren(document.createElement('td'), ...heads);
}
