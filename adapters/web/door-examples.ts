/** The examples on the page for forums; the same stand in the README, and a test runs them. */

export function boxExample(address: string): string {
  return `<div class="witness-mark"></div>
<script src="${address}/static/embed.js" async></script>`;
}

/** Bash, with what every Unix has. */
export function webhookExample(address: string): string {
  return `secret=whsec_…   # as the site gave it, for the source named forum
body='{"id":"post-1","thread":"topic-7","author":{"id":"17","name":"Ina"},"text":"which rear spoiler is this? rough inside"}'
id=msg_$(date +%s)
now=$(date +%s)
key=$(printf %s "\${secret#whsec_}" | base64 -d | od -An -v -tx1 | tr -d ' \\n')
signature=$(printf '%s.%s.%s' "$id" "$now" "$body" | openssl dgst -sha256 -mac HMAC -macopt "hexkey:$key" -binary | base64)
curl -s ${address}/webhook/forum \\
  -H 'content-type: application/json' -H "webhook-id: $id" -H "webhook-timestamp: $now" \\
  -H "webhook-signature: v1,$signature" --data-binary "$body"`;
}
