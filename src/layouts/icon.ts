const drawn =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="4" fill="#12304f"/><path d="M9 5h14L16 28Z" fill="#f6f3ea"/><path d="M16 5v23" stroke="#12304f" stroke-width="1.5" stroke-dasharray="3 2"/></svg>';

/** The site's mark as an address of its own: it is smaller than the request for it. */
export const icon = `data:image/svg+xml,${encodeURIComponent(drawn)}`;
