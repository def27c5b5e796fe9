#!/bin/sh
# The browser tests need a headless Chromium and its driver; get them where that can be done quietly.
set -eu
if command -v chromium >/dev/null 2>&1 && command -v chromedriver >/dev/null 2>&1; then exit 0; fi
if command -v apt-get >/dev/null 2>&1 && [ "$(id -u)" = 0 ]; then
  apt-get update -qq &&
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium chromium-driver >/dev/null &&
    exit 0
  echo "ensure-browser: could not install chromium; install the packages chromium and chromium-driver by hand, then run again" >&2
  exit 1
fi
echo "ensure-browser: no chromium on this machine; Selenium Manager will try to fetch one. If it cannot, install chromium and chromedriver." >&2
