// Read by whatever Node the machine has, so the syntax stays that of 2017 and nothing is imported
// before the version is known to be new enough.
import { runOnNewNode } from "./launch/entry.mjs";

runOnNewNode(function () {
  import("./launch/start-product.mjs").then(
    function (product) {
      return product.startProduct();
    },
    function (error) {
      process.stderr.write("Halfpass can't read its own start scripts: " + error.message + "\n");
      process.exitCode = 1;
    },
  );
});
