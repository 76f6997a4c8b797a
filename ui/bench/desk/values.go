package desk

import (
	"fmt"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/words"
)

// Values that are typed, and how far they may go.

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

// LongestBranch is more than any vehicle's loom has.
const LongestBranch unit.Millimetre = 50_000

// SetNumber reads a number, tests its range and makes the change.
func (m *Model) SetNumber(text string, least, most float64, name string, make func(v float64) *model.Harness) error {
	v, err := unit.ParseNumber(text)
	if err != nil {
		return fmt.Errorf("type a number, %s to %s %s", words.Trim(least), words.Trim(most), name)
	}
	if v < least || v > most {
		return fmt.Errorf("%s %s is out of range: %s to %s %s", words.Trim(v), name, words.Trim(least), words.Trim(most), name)
	}
	m.Change(make(v), fmt.Sprintf("set to %s %s", words.Trim(v), name))
	return nil
}
