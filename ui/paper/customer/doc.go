// Package customer makes the set that is handed over with a finished harness: its certificate of
// conformity, its drawing and pinout, the card for whoever mends it, and how it was built. It prints
// what contralay/calc/query/record says of a serial and judges nothing itself: where the record has
// something open, the first page says what, and there is no certificate.
//
// How long the steps took is the shop's own, and is printed nowhere.
package customer
