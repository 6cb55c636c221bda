export function Gallery() {
  return null;
}
