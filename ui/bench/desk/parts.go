package desk

import (
	"fmt"

	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Given is where a value comes from that the file holds.
var Given = catalogue.Origin{Source: "given in the file", Standing: catalogue.House}

// MostPart is more than any boot or wall measures.
const MostPart unit.Millimetre = 500

// PartSize reads a size of a part, more than 0 and up to most.
func (m *Model) PartSize(text string, most unit.Millimetre) (unit.Millimetre, error) {
	v, err := m.Sys.Parse(text)
	if err != nil {
		return 0, err
	}
	if v <= 0 || v > most {
		return 0, fmt.Errorf("%s %s is out of range: more than 0, %s %s at most", text, m.Sys.Name(), m.Sys.Fine(most), m.Sys.Name())
	}
	return v, nil
}
