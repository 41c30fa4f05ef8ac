/**
 * An SVG that stands alone as a PNG. It is drawn from a `data:` address, which the policy allows for images; nothing in
 * it refers to anything outside it.
 *
 * @param scale pixels of the PNG for each of the SVG
 */
export async function rasterised(svg: string, width: number, height: number, scale: number): Promise<Blob> {
  const image = new Image(width, height);
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = width * scale;
  canvas.height = height * scale;
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('this browser draws no canvas');
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((done, failed) =>
    canvas.toBlob((blob) => (blob ? done(blob) : failed(new Error('the picture is too large')))),
  );
}
