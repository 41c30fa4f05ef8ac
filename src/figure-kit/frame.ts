/** What stands around the axes, px. */
interface Margins {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

/** A drawing's height and margins, for Plot, and the room they leave between the axes, px. */
export function frameOf(width: number, height: number, { top, right, bottom, left }: Margins) {
  return {
    frame: { height, marginTop: top, marginRight: right, marginBottom: bottom, marginLeft: left },
    inner: { width: width - left - right, height: height - top - bottom },
  };
}
