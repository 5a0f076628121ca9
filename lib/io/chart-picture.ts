/** Properties that decide how a chart's marks look; written into the picture so that it needs no style sheet. */
const LOOK = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-opacity',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
] as const;

const NAMESPACE = 'http://www.w3.org/2000/svg';
const FONT = 'system-ui, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", sans-serif';
const MARGIN = 16;
const TITLE_SIZE = 18;
const TITLE_LINE = 24;
const LEGEND_SIZE = 13;
const LEGEND_LINE = 22;
const SWATCH_WIDTH = 28;
/** Mean width of a character over its size, near enough to break lines by. */
const CHARACTER = 0.55;

let dot: CanvasRenderingContext2D | null = null;

/** Red, green, blue and share of ink of any colour the browser understands; other programs know only these. */
function plainColour(colour: string): { readonly rgb: string; readonly alpha: number } | null {
  if (colour === 'none' || colour.startsWith('url(')) return null;
  dot ??= document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  if (!dot) return null;
  dot.clearRect(0, 0, 1, 1);
  dot.fillStyle = colour;
  dot.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0, alpha = 255] = dot.getImageData(0, 0, 1, 1).data;
  return { rgb: `rgb(${red}, ${green}, ${blue})`, alpha: alpha / 255 };
}

function writeLook(original: Element, copy: Element): void {
  const style = getComputedStyle(original);
  for (const name of LOOK) {
    const value = style.getPropertyValue(name);
    if (value !== '') copy.setAttribute(name, value.replaceAll('"', ''));
  }
  for (const name of ['fill', 'stroke'] as const) {
    const plain = plainColour(style.getPropertyValue(name));
    if (!plain) continue;
    copy.setAttribute(name, plain.rgb);
    if (plain.alpha < 1) copy.setAttribute(`${name}-opacity`, String(plain.alpha));
  }
  for (const name of ['class', 'style', 'tabindex', 'role']) copy.removeAttribute(name);
}

/** A copy of a drawing that looks the same without the page around it. */
function standAlone(svg: SVGSVGElement): SVGSVGElement {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const originals = [svg, ...svg.querySelectorAll('*')];
  const copies = [copy, ...copy.querySelectorAll('*')];
  originals.forEach((original, k) => {
    const twin = copies[k];
    if (twin) writeLook(original, twin);
  });
  const { width, height } = svg.getBoundingClientRect();
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  return copy;
}

function element(name: string, attributes: Readonly<Record<string, string | number>>, text = ''): SVGElement {
  const made = document.createElementNS(NAMESPACE, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  made.textContent = text;
  return made;
}

function brokenLines(text: string, width: number): string[] {
  const most = Math.max(12, Math.floor(width / (TITLE_SIZE * CHARACTER)));
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

interface Sheet {
  readonly root: SVGSVGElement;
  readonly width: number;
  readonly ink: string;
  /** How far down the sheet is used [px]. */
  used: number;
}

function addTitle(sheet: Sheet, title: string): void {
  for (const line of brokenLines(title, sheet.width)) {
    sheet.used += TITLE_LINE;
    const place = { x: MARGIN, y: sheet.used, 'font-size': TITLE_SIZE, fill: sheet.ink };
    sheet.root.append(element('text', place, line));
  }
  sheet.used += MARGIN / 2;
}

/** The legend of a figure, its swatches and words in rows. */
function addLegend(sheet: Sheet, figure: Element): void {
  let x = MARGIN;
  for (const item of figure.querySelectorAll('[data-legend] li')) {
    const words = item.textContent?.trim() ?? '';
    const swatch = item.querySelector('svg');
    const width = (swatch ? SWATCH_WIDTH : 0) + words.length * LEGEND_SIZE * CHARACTER + MARGIN;
    if (x === MARGIN || x + width > sheet.width) {
      x = MARGIN;
      sheet.used += LEGEND_LINE;
    }
    if (swatch) {
      const copy = standAlone(swatch);
      copy.setAttribute('x', String(x));
      copy.setAttribute('y', String(sheet.used - LEGEND_SIZE + 1));
      sheet.root.append(copy);
    }
    const place = { x: x + (swatch ? SWATCH_WIDTH : 0), y: sheet.used, 'font-size': LEGEND_SIZE, fill: sheet.ink };
    sheet.root.append(element('text', place, words));
    x += width;
  }
  sheet.used += MARGIN / 2;
}

function addCharts(sheet: Sheet, charts: readonly SVGSVGElement[]): void {
  for (const chart of charts) {
    const copy = standAlone(chart);
    copy.setAttribute('x', String(MARGIN));
    copy.setAttribute('y', String(sheet.used));
    sheet.root.append(copy);
    sheet.used += chart.getBoundingClientRect().height;
  }
  sheet.used += MARGIN;
}

function chartsOf(figure: Element): SVGSVGElement[] {
  const all = [...figure.querySelectorAll<SVGSVGElement>('[data-chart] svg')];
  return all.filter((svg) => svg.parentElement?.closest('svg') === null);
}

/** A figure's chart as a picture that stands alone: ground, title, legend, marks, all styles written out. Null without a chart. */
export function chartPicture(figure: Element, title: string): SVGSVGElement | null {
  const charts = chartsOf(figure);
  if (charts.length === 0) return null;
  const style = getComputedStyle(figure);
  const width = Math.ceil(Math.max(...charts.map((chart) => chart.getBoundingClientRect().width))) + 2 * MARGIN;
  const root = document.createElementNS(NAMESPACE, 'svg');
  const ground = plainColour(getComputedStyle(document.body).backgroundColor)?.rgb ?? 'white';
  const ink = plainColour(style.color)?.rgb ?? 'black';
  const sheet: Sheet = { root, width, ink, used: MARGIN / 2 };
  root.append(element('title', {}, title));
  const paper = element('rect', { x: 0, y: 0, fill: ground });
  root.append(paper);
  addTitle(sheet, title);
  addLegend(sheet, figure);
  addCharts(sheet, charts);
  for (const whole of [root, paper]) {
    whole.setAttribute('width', String(width));
    whole.setAttribute('height', String(Math.ceil(sheet.used)));
  }
  root.setAttribute('viewBox', `0 0 ${width} ${Math.ceil(sheet.used)}`);
  root.setAttribute('font-family', FONT);
  return root;
}

/** The picture as an SVG file. */
export function svgBlob(picture: SVGSVGElement): Blob {
  const text = new XMLSerializer().serializeToString(picture);
  return new Blob(['<?xml version="1.0" encoding="UTF-8"?>\n', text], { type: 'image/svg+xml;charset=utf-8' });
}

/** Pixels drawn for each of the picture's, so that it is sharp in print and on dense screens. */
const PNG_SCALE = 2;

/** The picture as a PNG file. Rejects when the browser cannot draw it. */
export async function pngBlob(picture: SVGSVGElement): Promise<Blob> {
  const url = URL.createObjectURL(svgBlob(picture));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = PNG_SCALE * Number(picture.getAttribute('width'));
    canvas.height = PNG_SCALE * Number(picture.getAttribute('height'));
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (!blob) throw new Error('the picture could not be drawn');
    return blob;
  } finally {
    URL.revokeObjectURL(url);
  }
}
