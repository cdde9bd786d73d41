// `npm start` with the stand-in in the place of the build.
import { fileURLToPath } from "node:url";
import { startProduct } from "../../scripts/launch/start-product.mjs";

const script = fileURLToPath(new URL("stand-in-web-server.mjs", import.meta.url));
await startProduct(undefined, { folder: fileURLToPath(new URL(".", import.meta.url)), script });
