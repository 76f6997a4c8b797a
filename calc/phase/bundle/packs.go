package bundle

import (
	"encoding/binary"
	"math"

	"contralay/calc/formula/lay"
	"contralay/model/unit"
)

// packs is the groups that were packed for one sheet, by their diameters: the branches of a long
// harness hold the same few, and a search for the smallest circle takes longer than all the rest.
type packs map[string]lay.Group

// of is lay.Pack, once for the same diameters. What it gives is only read.
func (p packs) of(d []unit.Millimetre) lay.Group {
	var key []byte
	for _, v := range d {
		key = binary.LittleEndian.AppendUint64(key, math.Float64bits(float64(v)))
	}
	g, met := p[string(key)]
	if !met {
		g = lay.Pack(d)
		p[string(key)] = g
	}
	return g
}
