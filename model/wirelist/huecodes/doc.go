// Package huecodes knows the short forms of one and two letters that the shops of each language write for colours, and finds whose
// short forms the cells of a column are.
//
// A short form means a colour only beside the others: "vi" is violet, or vihreä, or vit; "bl" is blanco, blauw or bleu. So a set of
// short forms is taken whole, when it reads the column whole.
//
// What it does not do: it reads no cell by itself, and no short form of a key that the list itself gives.
package huecodes
