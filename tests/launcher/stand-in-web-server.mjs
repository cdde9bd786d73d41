// Answers like a web server, so that the launcher's tests need no build.
import { createServer } from "node:http";
import process from "node:process";

createServer((_request, response) => response.end("stand-in\n")).listen({ port: Number(process.env.PORT), host: process.env.HOSTNAME });
