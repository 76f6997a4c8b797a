// Package keyed makes tables of lines whose pieces begin with a key each, in any order, and of cards of several lines, one fact a line
// behind a short key.
//
//	c=colour f=from t=to s=mm2            wire 21
//	c=brown;f=PLC Q0;t=valve 1 pin 1      col red
//	f=PLC Q2;t=horn;c=orange;s=0.5        a fuse block 4
//	                                      b bilge pump +
//
// What the keys mean the list says itself, or they are headings that are known. Cards with a colon behind each key are for package record.
package keyed
