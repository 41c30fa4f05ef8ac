/** Gives every link of the page that leads to a page of a comparison the one in `fragment`, however it is then followed. */
export function carry(fragment: string): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-carries], a[data-page]'))
    link.hash = fragment;
}
