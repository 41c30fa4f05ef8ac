/** A batch as its row names it. */
export const batchName = (batch: string | undefined): string =>
  batch === undefined || batch === '' ? 'batch not recorded' : batch;
