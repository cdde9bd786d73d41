/** An active ingredient that labels print under several names. */
export interface Substance {
  /** Common names, as ISO 1750 and the list of the Weed Science Society of America have them, and short ones of the trade. */
  readonly names: readonly string[];
  /** Names by structure, of the acid itself; salts and esters are printed with them too. */
  readonly chemicalNames: readonly string[];
  /** Whether it is a herbicide of resistance group 4, as most that are sold as salts and esters. */
  readonly isOfGroup4: boolean;
}

function ofGroup4(names: readonly string[], ...chemicalNames: readonly string[]): Substance {
  return { names, chemicalNames, isOfGroup4: true };
}

/**
 * The ingredients of turf herbicides that are sold as salts and esters, under the names by which labels print them. An
 * isomer has an entry of its own, because it is another ingredient than the mixture that has it. All from memory.
 */
export const SUBSTANCES: readonly Substance[] = [
  ofGroup4(["2,4-D"], "2,4-dichlorophenoxyacetic acid"),
  ofGroup4(["2,4-DB"], "4-(2,4-dichlorophenoxy)butyric acid", "4-(2,4-dichlorophenoxy)butanoic acid"),
  ofGroup4(["MCPA"], "2-methyl-4-chlorophenoxyacetic acid", "4-chloro-2-methylphenoxyacetic acid"),
  ofGroup4(["MCPB"], "4-(2-methyl-4-chlorophenoxy)butyric acid", "4-(4-chloro-2-methylphenoxy)butanoic acid"),
  ofGroup4(
    ["mecoprop", "MCPP", "CMPP"],
    ...["2-(2-methyl-4-chlorophenoxy)propionic acid", "2-(2-methyl-4-chlorophenoxy)propanoic acid"],
    ...["2-(4-chloro-2-methylphenoxy)propionic acid", "2-(4-chloro-2-methylphenoxy)propanoic acid"],
  ),
  ofGroup4(
    ["mecoprop-P", "MCPP-P", "CMPP-P"],
    ...["(R)-2-(2-methyl-4-chlorophenoxy)propionic acid", "(R)-2-(2-methyl-4-chlorophenoxy)propanoic acid"],
    ...["(R)-2-(4-chloro-2-methylphenoxy)propionic acid", "(R)-2-(4-chloro-2-methylphenoxy)propanoic acid"],
  ),
  ofGroup4(["dichlorprop", "2,4-DP"], "2-(2,4-dichlorophenoxy)propionic acid", "2-(2,4-dichlorophenoxy)propanoic acid"),
  ofGroup4(["dichlorprop-P", "2,4-DP-P"], "(R)-2-(2,4-dichlorophenoxy)propionic acid", "(R)-2-(2,4-dichlorophenoxy)propanoic acid"),
  ofGroup4(["dicamba"], "3,6-dichloro-2-methoxybenzoic acid", "3,6-dichloro-o-anisic acid", "2-methoxy-3,6-dichlorobenzoic acid"),
  ofGroup4(["triclopyr"], "3,5,6-trichloro-2-pyridinyloxyacetic acid", "(3,5,6-trichloropyridin-2-yl)oxyacetic acid", "3,5,6-trichloro-2-pyridyloxyacetic acid"),
  ofGroup4(["clopyralid"], "3,6-dichloro-2-pyridinecarboxylic acid", "3,6-dichloropyridine-2-carboxylic acid", "3,6-dichloropicolinic acid"),
  ofGroup4(
    ["fluroxypyr"],
    ...["4-amino-3,5-dichloro-6-fluoro-2-pyridinyloxyacetic acid", "(4-amino-3,5-dichloro-6-fluoropyridin-2-yl)oxyacetic acid", "4-amino-3,5-dichloro-6-fluoro-2-pyridyloxyacetic acid"],
  ),
  ofGroup4(["picloram"], "4-amino-3,5,6-trichloro-2-pyridinecarboxylic acid", "4-amino-3,5,6-trichloropyridine-2-carboxylic acid", "4-amino-3,5,6-trichloropicolinic acid"),
  ofGroup4(["aminopyralid"], "4-amino-3,6-dichloro-2-pyridinecarboxylic acid", "4-amino-3,6-dichloropyridine-2-carboxylic acid", "4-amino-3,6-dichloropicolinic acid"),
  ofGroup4(["aminocyclopyrachlor"], "6-amino-5-chloro-2-cyclopropyl-4-pyrimidinecarboxylic acid", "6-amino-5-chloro-2-cyclopropylpyrimidine-4-carboxylic acid"),
  ofGroup4(["halauxifen"]),
  ofGroup4(["florpyrauxifen"]),
  ofGroup4(["quinclorac"], "3,7-dichloro-8-quinolinecarboxylic acid", "3,7-dichloroquinoline-8-carboxylic acid"),
  { names: ["glyphosate"], chemicalNames: ["N-(phosphonomethyl)glycine"], isOfGroup4: false },
  { names: ["MSMA", "monosodium methanearsonate"], chemicalNames: ["monosodium acid methanearsonate", "monosodium salt of methanearsonic acid"], isOfGroup4: false },
];
