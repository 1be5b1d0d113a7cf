import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF point is 1/72 inch. */
const MILLIMETRE = 72 / 25.4;

/** A run of text where it stands on its sheet: millimetres from the left and from the top, at its baseline. */
export interface Run {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Size of its type in points, as it comes out on the sheet. */
  readonly points: number;
}

/** One sheet: its size in millimetres and its runs of text in the order of reading. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly Run[];
  /** All its text, every stretch of white space as one space. */
  readonly text: string;
}

/** Opens a document by a reader that has nothing to do with the browser that wrote it, and closes it after the work. */
export async function withPdf<T>(bytes: Uint8Array, work: (pdf: PDFDocumentProxy) => Promise<T>): Promise<T> {
  const loading = getDocument({ data: new Uint8Array(bytes), verbosity: 0, fontExtraProperties: true });
  try {
    return await work(await loading.promise);
  } finally {
    await loading.destroy();
  }
}

/** All sheets of a document. */
export async function sheetsOf(pdf: PDFDocumentProxy): Promise<Sheet[]> {
  const sheets: Sheet[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const runs = items.flatMap((item): Run[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [, , , , x, y] = item.transform as number[];
      // A rotated run goes up the sheet: its width is its height there.
      const upright = Math.abs((item.transform as number[])[1] ?? 0) < 1e-6;
      const left = (x ?? 0) / MILLIMETRE;
      return [
        {
          text: item.str,
          left,
          right: left + (upright ? item.width / MILLIMETRE : 0),
          top: (height - (y ?? 0)) / MILLIMETRE,
          points: item.height,
        },
      ];
    });
    sheets.push({
      width: width / MILLIMETRE,
      height: height / MILLIMETRE,
      runs,
      text: items
        .map((item) => ('str' in item ? item.str : ''))
        .join(' ')
        .replace(/\s+/g, ' '),
    });
  }
  return sheets;
}

/** A sheet as a picture: RGBA, so many dots an inch. */
export async function pictureOf(pdf: PDFDocumentProxy, number: number, dpi: number) {
  const page = await pdf.getPage(number);
  const viewport = page.getViewport({ scale: dpi / 72 });
  const factory = pdf.canvasFactory as {
    create(width: number, height: number): { canvas: HTMLCanvasElement };
  };
  const { canvas } = factory.create(Math.ceil(viewport.width), Math.ceil(viewport.height));
  await page.render({ canvas, viewport, background: '#fff' }).promise;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no picture can be drawn here');
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
