// A name as it is compared: small letters, no accents, no marks of punctuation, single spaces. What differs only in these
// is the same name: "Saint-Étienne", "saint etienne" and "SAINT ETIENNE".

/** Accents of Latin, Greek and Cyrillic letters, vowel marks of Arabic, points of Hebrew. Vowels of Indic scripts stay. */
const MARKS = /[\u0300-\u036f\u0591-\u05c7\u064b-\u065f\u0670]/g;
/** Letters that are no letter with an accent to Unicode. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
  ð: 'd',
  ı: 'i',
  ŋ: 'n',
  ə: 'e',
  ħ: 'h',
  ŧ: 't',
};
/** Latin letters and signs as wide as those of Chinese and Japanese, and how far they stand from the usual ones. */
const WIDE = /[\uff01-\uff5e]/g;
const WIDE_FROM_USUAL = 0xfee0;
const SILENT = /['’‘ʻʼ`´ʹʺʿʾ.·"“”]/g;
const GAPS = /[ \-\u2010-\u2015\u00a0\u3000_/,;()[\]・＝=]+/g;

/**
 * The name as it is compared.
 *
 * @param name any text; tabs and line feeds stay, so that a list of names can be folded at once
 */
export function foldedName(name: string): string {
  return name
    .replace(WIDE, (letter) => String.fromCharCode(letter.charCodeAt(0) - WIDE_FROM_USUAL))
    .toLowerCase()
    .normalize('NFD')
    .replace(MARKS, '')
    .replace(/[ßøłđæœþðıŋəħŧ]/g, (letter) => LETTERS[letter]!)
    .normalize('NFC')
    .replace(SILENT, '')
    .replace(GAPS, ' ')
    .replace(/^ | $/gm, '');
}

/** Whether a name is written in Latin letters. */
export function isLatin(name: string): boolean {
  return !/[\u0370-\u1cff\u1f00-\u1fff\u2070-\uffff]/.test(name);
}
