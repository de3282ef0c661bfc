/* Apart from the other measures: the page reads decimals as well, and needs no shape of a sheet for it. */

/** `5,5` as `5.5`; any other text as it is. */
export function pointDecimal(text: string): string {
  return text.replace(/^(\s*[+-]?\d+),(\d+\s*)$/, "$1.$2");
}
