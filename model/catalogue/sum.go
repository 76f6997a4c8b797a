package catalogue

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
)

// Sum is a hash of every entry with all it holds, sources and standings too; corrections have
// a hash of their own. Two catalogues that differ in anything have two sums.
func (c *Catalogue) Sum() [sha256.Size]byte { return sumOf(packOf(c)) }

// InForce is the corrections that are in use and that change a sheet, one of each kind, in the order in
// which the kinds were first learned.
func (c *Catalogue) InForce() []Correction {
	var out []Correction
	seen := map[string]bool{}
	for _, k := range c.Corrections {
		if seen[k.Of] {
			continue
		}
		seen[k.Of] = true
		if now, ok := c.Correction(k.Of); ok && !now.IsTime() {
			out = append(out, now)
		}
	}
	return out
}

// SumOfCorrections is a hash of corrections with all they hold.
func SumOfCorrections(all []Correction) [sha256.Size]byte { return sumOf(all) }

// sumOf is a hash of a value by what its fields hold. What JSON cannot write, a figure that
// is none, is hashed as Go writes it.
func sumOf(v any) [sha256.Size]byte {
	text, err := json.Marshal(v)
	if err != nil {
		text = fmt.Appendf(nil, "%#v", v)
	}
	return sha256.Sum256(text)
}
