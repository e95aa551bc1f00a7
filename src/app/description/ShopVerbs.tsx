import { shopRemoved } from "../describe/shop/changeShop";
import { keysOf, type ShopClause } from "../describe/shop/shopClauses";
import { changing } from "../store/changing";
import { spell } from "../store/store";
import { words } from "../words/interface";
import { shopWords } from "../words/shop";
import { verbWords } from "../words/verbs";
import { VerbMenu } from "./VerbMenu";

/** The verb of a clause for the shop: to leave out again what it adds. */
export function ShopVerbs({ id, name }: { id: ShopClause; name: string }) {
  const { remove } = verbWords;
  const act = () => {
    changing((by) => {
      by.change((job) => shopRemoved(job, id), words.done(remove, name));
      for (const key of keysOf(id)) spell(key, false);
    });
  };
  return <VerbMenu className="clause-verbs" word={verbWords.more} label={shopWords.verbs(name)} verbs={[{ label: remove, act }]} />;
}
