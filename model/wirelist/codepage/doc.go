// Package codepage reads texts that are no UTF-8 in the code page that their letters fit best.
//
// What it does not do: it finds no byte-order mark and no UTF-16; package table does that first.
package codepage
