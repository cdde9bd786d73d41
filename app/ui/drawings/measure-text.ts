/** The weights of the sans face that drawings use. */
export type DrawnWeight = 400 | 600 | 700;

/**
 * Advance widths of Atkinson Hyperlegible Next, in thousandths of an em and with tabular figures, in the order of
 * `measuredCharacters`. Source: the face's own latin files, by tests/ui/measure-text.test.ts, which compares all of
 * them. A drawing is laid out on the server, where no browser can measure.
 */
const measuredCharacters =
    " !\"#$%&'()*+,-./" +
    "0123456789:;<=>?" +
    "@ABCDEFGHIJKLMNO" +
    "PQRSTUVWXYZ[\\]^_" +
    "`abcdefghijklmno" +
    "pqrstuvwxyz{|}~\u00a0" +
    "¡¢£¤¥¦§¨©ª«¬®¯°±" +
    "²³´¶·¸¹º»¼½¾¿ÀÁÂ" +
    "ÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒ" +
    "ÓÔÕÖ×ØÙÚÛÜÝÞßàáâ" +
    "ãäåæçèéêëìíîïðñò" +
    "óôõö÷øùúûüýþÿ–—‘" +
    "’“”…•−⁄™Œœ€";

const advanceWidths: Readonly<Record<DrawnWeight, readonly number[]>> = {
  400: [
    280, 286, 301, 651, 592, 919, 731, 160, 299, 299, 485, 606, 210, 362, 210, 387,
    632, 632, 632, 632, 632, 632, 632, 632, 632, 632, 210, 210, 553, 628, 553, 480,
    778, 626, 613, 645, 669, 569, 552, 694, 694, 392, 512, 631, 541, 824, 693, 714,
    592, 724, 614, 592, 558, 690, 593, 856, 623, 575, 607, 317, 387, 344, 552, 372,
    243, 525, 566, 485, 564, 538, 314, 558, 550, 252, 245, 492, 262, 845, 550, 548,
    566, 574, 349, 471, 326, 540, 461, 684, 481, 449, 460, 344, 237, 344, 555, 280,
    286, 485, 610, 580, 575, 237, 528, 368, 798, 371, 562, 602, 798, 356, 352, 579,
    382, 383, 243, 509, 240, 265, 256, 380, 562, 816, 820, 867, 450, 626, 626, 626,
    626, 626, 626, 891, 645, 569, 569, 569, 569, 392, 392, 392, 392, 689, 693, 714,
    714, 714, 714, 714, 532, 714, 690, 690, 690, 690, 575, 592, 582, 525, 525, 525,
    525, 525, 525, 866, 485, 538, 538, 538, 538, 252, 252, 252, 266, 565, 550, 548,
    548, 548, 548, 548, 606, 548, 540, 540, 540, 540, 449, 566, 449, 504, 824, 236,
    236, 399, 399, 670, 438, 606, 586, 874, 1006, 924, 664,
  ],
  600: [
    303, 298, 362, 730, 604, 953, 727, 195, 324, 324, 485, 598, 252, 369, 253, 424,
    632, 632, 632, 632, 632, 632, 632, 632, 632, 632, 253, 253, 564, 617, 564, 526,
    780, 662, 634, 654, 683, 589, 562, 711, 699, 415, 546, 654, 548, 848, 710, 737,
    617, 747, 639, 604, 592, 687, 628, 877, 666, 627, 615, 333, 424, 344, 573, 391,
    274, 544, 587, 502, 586, 555, 349, 582, 565, 285, 255, 536, 301, 870, 565, 567,
    587, 591, 368, 497, 360, 559, 509, 723, 522, 499, 492, 370, 249, 370, 543, 303,
    298, 502, 627, 589, 627, 249, 547, 412, 798, 385, 622, 611, 798, 375, 381, 601,
    396, 400, 274, 517, 277, 288, 276, 396, 622, 837, 843, 904, 503, 662, 662, 662,
    662, 662, 662, 943, 654, 589, 589, 589, 589, 415, 415, 415, 415, 703, 710, 737,
    737, 737, 737, 737, 535, 737, 687, 687, 687, 687, 627, 617, 609, 544, 544, 544,
    544, 544, 544, 874, 502, 555, 555, 555, 555, 285, 285, 285, 299, 581, 565, 567,
    567, 567, 567, 567, 598, 567, 559, 559, 559, 559, 499, 587, 499, 502, 830, 259,
    259, 455, 455, 747, 438, 598, 607, 921, 1018, 932, 674,
  ],
  700: [
    312, 303, 390, 765, 610, 969, 725, 210, 335, 335, 485, 595, 271, 373, 272, 440,
    632, 632, 632, 632, 632, 632, 632, 632, 632, 632, 272, 272, 569, 612, 569, 547,
    781, 678, 643, 658, 688, 597, 566, 718, 701, 424, 561, 663, 552, 858, 717, 746,
    629, 756, 650, 610, 607, 686, 644, 886, 685, 650, 618, 340, 440, 344, 582, 400,
    288, 552, 596, 510, 596, 563, 365, 593, 571, 300, 259, 555, 318, 882, 571, 576,
    596, 599, 376, 508, 376, 567, 530, 740, 539, 521, 505, 381, 254, 381, 537, 312,
    303, 510, 634, 593, 650, 254, 555, 432, 798, 390, 649, 615, 798, 383, 394, 611,
    402, 407, 288, 521, 294, 297, 284, 403, 649, 846, 852, 921, 526, 678, 678, 678,
    678, 678, 678, 966, 658, 597, 597, 597, 597, 424, 424, 424, 424, 708, 717, 746,
    746, 746, 746, 746, 536, 746, 686, 686, 686, 686, 650, 629, 621, 552, 552, 552,
    552, 552, 552, 878, 510, 563, 563, 563, 563, 300, 300, 300, 314, 588, 571, 576,
    576, 576, 576, 576, 595, 576, 567, 567, 567, 567, 521, 596, 521, 501, 832, 269,
    269, 479, 479, 780, 438, 595, 617, 942, 1024, 936, 678,
  ],
};

const indexOfCharacter = new Map([...measuredCharacters].map((character, index) => [character, index]));

/** Kerning can widen a pair and hinting can round up: two in a hundred cover both. */
const caution = 1.02;

/** Every character whose width is known; tests compare them with the font files. */
export const knownCharacters: readonly string[] = [...measuredCharacters];

/** The advance width of one character in em, or of the widest one when the face has no such character. */
export function characterWidthEm(character: string, weight: DrawnWeight): number {
  const widths = advanceWidths[weight];
  const index = indexOfCharacter.get(character);
  const width = index === undefined ? undefined : widths[index];
  return (width ?? Math.max(...widths)) / 1000;
}

/** The width of a line of text in the unit of `size`, a little on the wide side. */
export function measureText(text: string, size: number, weight: DrawnWeight = 400): number {
  let widthEm = 0;
  for (const character of text) widthEm += characterWidthEm(character, weight);
  return widthEm * size * caution;
}

/**
 * Breaks a text into lines no wider than `width`. A word that is wider than a line by itself is broken within, with a
 * hyphen, so that nothing is ever cut off.
 */
export function wrapText(text: string, width: number, size: number, weight: DrawnWeight = 400): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ").flatMap((whole) => breakWord(whole, width, size, weight))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && measureText(longer, size, weight) > width) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return line === "" ? lines : [...lines, line];
}

function breakWord(word: string, width: number, size: number, weight: DrawnWeight): readonly string[] {
  if (measureText(word, size, weight) <= width) return [word];
  const pieces: string[] = [];
  let piece = "";
  for (const character of word) {
    if (piece !== "" && measureText(`${piece}${character}-`, size, weight) > width) {
      pieces.push(`${piece}-`);
      piece = "";
    }
    piece += character;
  }
  return [...pieces, piece];
}
