/** Lets the browser paint and answer before what comes next. */
export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
