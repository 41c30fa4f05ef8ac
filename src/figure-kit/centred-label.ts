/** A label in the middle below an axis, without an arrow. */
export const centredLabel = (label: string) =>
  ({ label, labelAnchor: 'center', labelArrow: 'none' }) as const;
