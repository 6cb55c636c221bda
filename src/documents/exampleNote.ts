/**
 * A one-page PDF of a few plain lines, made at once and without the writer of papers: the earlier papers of the practice book. It says
 * EXAMPLE and carries nothing. Letters outside ASCII are shown as question marks: the lines are the app's own.
 */
const escaped = (line: string): string => line.replace(/[^ -~]/g, '?').replace(/[\\()]/g, (found) => `\\${found}`);

/** Width and height of US letter paper in points. */
const [pageWidth, pageHeight] = [612, 792];

function bodyOf(title: string, lines: readonly string[]): string {
  const text = lines.map((line) => `(${escaped(line)}) Tj T*`).join('\n');
  return `BT /F1 28 Tf 72 700 Td 18 TL (${escaped(title)}) Tj /F1 12 Tf T* T*\n${text}\nET`;
}

/** ISO 32000-1, 7.5: header, objects, cross-reference table, trailer. Every byte is ASCII, so places are counted in letters. */
export function exampleNote(title: string, lines: readonly string[]): Uint8Array {
  const body = bodyOf(title, lines);
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 ${pageWidth} ${pageHeight}] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>`,
    `<< /Length ${body.length} >>\nstream\n${body}\nendstream`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
  ];
  let written = '%PDF-1.4\n';
  const places = objects.map((object, index) => {
    const place = written.length;
    written += `${index + 1} 0 obj\n${object}\nendobj\n`;
    return place;
  });
  const start = written.length;
  const table = places.map((place) => `${String(place).padStart(10, '0')} 00000 n \n`).join('');
  written += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${table}`;
  written += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  return new TextEncoder().encode(written);
}
