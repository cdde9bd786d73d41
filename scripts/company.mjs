// Read by whatever Node the machine has, so the syntax stays that of 2017.
import { refuseOldNode } from "./launch/node-version.mjs";

const tooOld = refuseOldNode(process.versions.node);
if (tooOld) {
  process.stderr.write(tooOld + "\n");
  process.exitCode = 1;
} else {
  import("./launch/run-company.mjs")
    .then(function (company) {
      return company.runCompany(process.argv.slice(2));
    })
    .catch(function (error) {
      process.stderr.write(error.message + "\n");
      process.exitCode = 1;
    });
}
