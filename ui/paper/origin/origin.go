// Package origin says what a sheet was made from, and gives every sheet an identity of its own.
//
// The identity is a hash of all that a sheet is made from and of every word on it. Two sheets
// that differ in one printed sign have two identities; so have two that look the same and were
// made from another file, catalogue, correction or release of the program. The parts stand
// beside it, so that whoever holds two sheets sees which part is another one.
package origin

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file/schema"
)

// Origin is what a sheet was made from.
type Origin struct {
	Harness     string                 // hash of the harness as a file holds it
	Catalogue   string                 // of the catalogue, every file of it merged
	InForce     []catalogue.Correction // that are in use
	Corrections string                 // hash of those; "" for none
	Release     string                 // of the program
	whole       []byte                 // the hashes in full
}

// shown is how many digits of a part's hash are printed: enough to tell it from another one
// by eye.
const shown = 12

// Of is what a sheet was made from.
func Of(s *sheet.Sheet) Origin {
	harness, cat := sha256.Sum256([]byte(schema.Text(s.H))), s.Base.Sum()
	o := Origin{Harness: short(harness), Catalogue: short(cat), InForce: s.Base.InForce(), Release: Release}
	corrections := catalogue.SumOfCorrections(o.InForce)
	if len(o.InForce) > 0 {
		o.Corrections = short(corrections)
	}
	o.whole = slices.Concat(harness[:], cat[:], corrections[:], []byte(Release))
	return o
}

func short(sum [sha256.Size]byte) string { return fmt.Sprintf("%x", sum)[:shown] }

// Identity is that of a sheet with these texts on it: 16 digits in groups of four, to be read
// out over the board.
func (o Origin) Identity(texts ...[]byte) string {
	h := sha256.New()
	for _, text := range append([][]byte{o.whole}, texts...) {
		h.Write(binary.BigEndian.AppendUint64(nil, uint64(len(text)))) // no text runs into the next
		h.Write(text)
	}
	digits := fmt.Sprintf("%x", h.Sum(nil))
	return strings.Join([]string{digits[:4], digits[4:8], digits[8:12], digits[12:16]}, "-")
}

// Learned says how many corrections are in force, and which.
func (o Origin) Learned() string {
	switch len(o.InForce) {
	case 0:
		return "no corrections"
	case 1:
		return "1 correction " + o.Corrections
	}
	return fmt.Sprintf("%d corrections %s", len(o.InForce), o.Corrections)
}
