/** Countries that print on Letter: Unicode CLDR, supplemental data, `paperSize` [memory]. */
const letterCountries: ReadonlySet<string | undefined> = new Set(
  'BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '),
);

/** The country that a language tag names (BCP 47), such as US in `en-US`. */
const countryOf = (language: string): string | undefined => {
  try {
    return new Intl.Locale(language).region;
  } catch {
    // A language that is none.
    return undefined;
  }
};

/** The paper that a shop begins with: what is usual in the first country that the browser's languages name; A4 where they name none. */
export const firstPaper = (languages: readonly string[]): 'a4' | 'letter' =>
  letterCountries.has(languages.map(countryOf).find((country) => country !== undefined)) ? 'letter' : 'a4';
