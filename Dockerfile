# Two stages: the packages that run, then the sources beside them. There is nothing to build; Node 24 reads TypeScript.
FROM node:24-bookworm-slim AS packages
WORKDIR /opt/witness-mark
COPY package.json package-lock.json ./
RUN npm ci --omit=dev --no-audit --no-fund

FROM node:24-bookworm-slim
ENV NODE_ENV=production \
    HOST=0.0.0.0 \
    PORT=8787 \
    DATA_DIR=/var/lib/witness-mark
WORKDIR /opt/witness-mark
RUN install -d -o node -g node -m 0700 "$DATA_DIR"
COPY --from=packages /opt/witness-mark/node_modules node_modules
COPY package.json ./
COPY knowledge knowledge
COPY bot bot
COPY adapters adapters
USER node
VOLUME ["/var/lib/witness-mark"]
EXPOSE 8787
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=30s --timeout=3s --start-period=5s --retries=3 \
  CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/readyz`).then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
# The program ends by itself on SIGTERM and starts no other process, so no init is needed around it.
CMD ["node", "adapters/main.ts"]
