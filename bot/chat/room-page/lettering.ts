/* The page's own letters. */

const WEIGHTS = [400, 700];

/**
 * Tells the styles, by `data-lettered`, that the letters are here. Until then nothing may be left out of the layout for being
 * out of sight: WebKit shows its words in the new letters later, but at the places of the old ones.
 */
export async function awaitLetters(): Promise<void> {
  const { fonts, documentElement } = document;
  await Promise.allSettled(WEIGHTS.map((weight) => fonts.load(`${weight} 1em "Atkinson Hyperlegible"`)));
  documentElement.dataset["lettered"] = "";
}
