package whatif

import (
	"slices"
	"strconv"
	"strings"

	"contralay/calc/sheet"
)

// Most is how many values Kinds gives in all.
const Most = 40

// Kind is one way in which a branch could be otherwise, with its values in order.
type Kind struct {
	ID     string // a key, never shown: "layup", "centre", "spares", "hand", "size 22", "spec", "sheath"
	Name   string // in plain words: "lay-up", "centre", "spare wires", "outer layer", "size 22", "specification", "sheath"
	Values []Value
	Now    int // index of the present value; -1 where the present is none of them
}

// Value is one value of a kind: all that Changed needs to know of it.
type Value struct {
	Key  string // the same for the same value of whatever sheet: "centre three"
	Says string // "three", "6", "AS22759/34", "RH", "24", "AS23053/16"; "" for a lay-up, which Laid says
	Laid []int  // of a lay-up: pieces in each layer with fillers, from the centre outward; else nil

	name   string // of its kind
	change change
}

// Name is what a value is called where its kind does not stand beside it: "centre: three", "lay-up: 2-14-22".
func (v Value) Name() string {
	if v.Laid == nil {
		return v.name + ": " + v.Says
	}
	var counts []string
	for _, n := range v.Laid {
		counts = append(counts, strconv.Itoa(n))
	}
	return v.name + ": " + strings.Join(counts, "-")
}

// change is how a harness becomes otherwise. It holds for the sheet whose Kinds gave it and for those after it, as
// long as the branch is there.
type change interface {
	// present reports whether the branch is that way now.
	present(s *sheet.Sheet, i int) bool
	// make changes what it names; lay-up and sheath follow in Changed.
	make(s *sheet.Sheet, i int) (trial, error)
}

// Kinds is every way in which branch i could be otherwise, in the order in which a person decides, at most Most values
// in all: those nearest to the present are kept. It plans nothing and builds nothing; whether a value can be laid at
// all is found by Changed. A branch that nothing runs through, or whose pieces have no known diameter, has none.
func Kinds(s *sheet.Sheet, i int) []Kind {
	if i < 0 || i >= len(s.Branches) || len(s.Branches[i].As) == 0 {
		return nil
	}
	var all []Kind
	for _, k := range slices.Concat(layups(s, i), centres(s, i), spares(s, i), hands(s, i), sizes(s, i), specs(s, i), sheaths(s, i)) {
		if len(k.Values) == 0 || len(k.Values) == 1 && k.Now == 0 {
			continue // there is no other
		}
		for n := range k.Values {
			k.Values[n].Key, k.Values[n].name = k.ID+" "+k.Values[n].Key, k.Name
		}
		all = append(all, k)
	}
	return nearest(all, Most)
}

// nearest leaves out the values furthest from the present until no more than most are left.
func nearest(all []Kind, most int) []Kind {
	total := 0
	for _, k := range all {
		total += len(k.Values)
	}
	for ; total > most; total-- {
		var far, of int
		var first bool
		for n, k := range all {
			last := len(k.Values) - 1
			if k.Now > far {
				far, of, first = k.Now, n, true
			}
			if d := last - max(k.Now, 0); d > far {
				far, of, first = d, n, false
			}
		}
		k := &all[of]
		if first {
			k.Values, k.Now = k.Values[1:], k.Now-1
		} else {
			k.Values = k.Values[:len(k.Values)-1]
		}
	}
	return all
}
