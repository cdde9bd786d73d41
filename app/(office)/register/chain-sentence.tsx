import { type ChainStanding } from "#application/register/list-register";
import { MarkedWords } from "#ui/marked-words";

/** How the chain of hashes stands, as a sentence. */
export function ChainSentence({ chain }: { readonly chain: ChainStanding }) {
  if (chain.kind === "broken") {
    return <MarkedWords level="hold">The chain breaks at entry {chain.atNumber}: it or the one before it is not as it was written.</MarkedWords>;
  }
  if (chain.entries === 0) return <>No entry is written yet.</>;
  const count = chain.entries === 1 ? "The one entry stands" : `All ${String(chain.entries)} entries stand`;
  return <>{count} as written: each carries the hash of the one before it, and none is missing.</>;
}
