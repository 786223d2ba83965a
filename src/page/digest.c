/* SPDX-License-Identifier: ISC */
/*
 * SHA-256 by NIST FIPS 180-4, base64 by RFC 4648.
 */
#include "page/digest.h"

enum { BLOCK = 64, WORDS = 8, ROUNDS = 64, DIGEST = 4 * WORDS };

/* The fractions of the cube roots of the first 64 primes. */
static const uint32_t rounds[ROUNDS] = {0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5,
    0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98, 0x12835b01, 0x243185be,
    0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786,
    0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152,
    0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e,
    0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624,
    0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3,
    0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208,
    0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

static uint32_t
turn(uint32_t x, int by)
{
	return x >> by | x << (32 - by);
}

static void
spread(uint32_t w[ROUNDS], const unsigned char *block)
{
	for (int i = 0; i < 16; i++, block += 4)
		w[i] = (uint32_t)block[0] << 24 | (uint32_t)block[1] << 16 |
		       (uint32_t)block[2] << 8 | block[3];
	for (int i = 16; i < ROUNDS; i++) {
		uint32_t a = w[i - 15], b = w[i - 2];

		w[i] = w[i - 16] + (turn(a, 7) ^ turn(a, 18) ^ a >> 3) + w[i - 7] +
		       (turn(b, 17) ^ turn(b, 19) ^ b >> 10);
	}
}

static void
take_block(uint32_t h[WORDS], const unsigned char *block)
{
	uint32_t w[ROUNDS], v[WORDS];

	spread(w, block);
	memcpy(v, h, sizeof v);
	for (int i = 0; i < ROUNDS; i++) {
		uint32_t e = v[4], a = v[0];
		uint32_t t1 = v[7] + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) +
			      ((e & v[5]) ^ (~e & v[6])) + rounds[i] + w[i];
		uint32_t t2 = (turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) +
			      ((a & v[1]) ^ (a & v[2]) ^ (v[1] & v[2]));

		memmove(v + 1, v, 7 * sizeof *v);
		v[4] += t1;
		v[0] = t1 + t2;
	}
	for (int i = 0; i < WORDS; i++)
		h[i] += v[i];
}

/* The rest of s, a bit, zeros, and the length in bits at the very end. */
static void
take_end(uint32_t h[WORDS], struct str rest, uint64_t bytes)
{
	unsigned char block[2 * BLOCK] = {0};
	size_t end = rest.n + 9 <= BLOCK ? BLOCK : 2 * BLOCK;

	if (rest.n)
		memcpy(block, rest.p, rest.n);
	block[rest.n] = 0x80;
	for (int i = 0; i < 8; i++)
		block[end - 1 - i] = (unsigned char)(bytes * 8 >> 8 * i);
	take_block(h, block);
	if (end > BLOCK)
		take_block(h, block + BLOCK);
}

static void
put_base64(struct buf *b, const unsigned char *v, size_t n)
{
	static const char digits[] =
	    "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

	for (size_t i = 0; i < n; i += 3) {
		uint32_t three = (uint32_t)v[i] << 16;

		three |= i + 1 < n ? (uint32_t)v[i + 1] << 8 : 0;
		three |= i + 2 < n ? v[i + 2] : 0;
		buf_put_char(b, digits[three >> 18]);
		buf_put_char(b, digits[three >> 12 & 63]);
		buf_put_char(b, i + 1 < n ? digits[three >> 6 & 63] : '=');
		buf_put_char(b, i + 2 < n ? digits[three & 63] : '=');
	}
}

void
digest_put(struct buf *b, struct str s)
{
	/* The fractions of the square roots of the first 8 primes. */
	uint32_t h[WORDS] = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f,
	    0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
	unsigned char out[DIGEST];
	size_t at = 0;

	for (; s.n - at >= BLOCK; at += BLOCK)
		take_block(h, (const unsigned char *)s.p + at);
	take_end(h, str_cut(s, at, s.n), s.n);
	for (int i = 0; i < DIGEST; i++)
		out[i] = (unsigned char)(h[i / 4] >> (24 - 8 * (i % 4)));
	buf_put_z(b, "sha256-");
	put_base64(b, out, sizeof out);
}
