package inserts

import (
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Wire is so many wires that are alike. Without a size only the diameter is known, and only the
// seal is judged.
type Wire struct {
	Spec, Size string
	OverMM     unit.Millimetre // measured; 0 takes the catalogue's
	Count      int
}

// Pair is so many pairs of one wire; of a shielded one the drain takes a cavity too.
type Pair struct {
	Wire     // Count is of pairs
	Shielded bool
}

// Want is what must go into a connector.
type Want struct {
	Wires  []Wire
	Pairs  []Pair
	Drains []Wire // those that end in a cavity, beside those of Pairs; by the gauge of their unit's wires
	Spares int    // cavities that stay free for the wire that is asked for most
}

// Cavities is how many cavities are wanted in all.
func (w Want) Cavities() int {
	n := max(0, w.Spares)
	for _, k := range w.Wires {
		n += max(0, k.Count)
	}
	for _, k := range w.Drains {
		n += max(0, k.Count)
	}
	for _, p := range w.Pairs {
		n += max(0, p.Count) * (2 + one(p.Shielded))
	}
	return n
}

func one(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// Role is what a cavity is wanted for.
type Role uint8

// Roles.
const (
	ForWire Role = iota
	ForDrain
	ForSpare
)

// kind is wires that no contact tells apart.
type kind struct {
	says   string
	role   Role
	area   unit.SquareMM    // of copper; 0: not known
	over   unit.Millimetre  // 0: not judged
	from   catalogue.Origin // of over
	byOver bool             // the diameter is all that is known of it
	unread bool             // the catalogue lacks its size
	count  int
}

// kinds sorts what is wanted, in the order it was asked for; what is asked for twice is added up.
func kinds(cat *catalogue.Catalogue, w Want) []kind {
	var out []kind
	several := len(specs(w)) > 1
	add := func(x Wire, r Role, count int) {
		k := kindOf(cat, x, r, several)
		i := slices.IndexFunc(out, func(o kind) bool {
			return o.role == k.role && o.says == k.says && o.over == k.over
		})
		switch {
		case count <= 0:
		case i >= 0:
			out[i].count += count
		default:
			k.count = count
			out = append(out, k)
		}
	}
	for _, x := range w.Wires {
		add(x, ForWire, x.Count)
	}
	for _, p := range w.Pairs {
		add(p.Wire, ForWire, 2*max(0, p.Count))
	}
	for _, p := range w.Pairs {
		if p.Shielded {
			add(p.Wire, ForDrain, p.Count)
		}
	}
	for _, x := range w.Drains {
		add(x, ForDrain, x.Count)
	}
	if w.Spares > 0 {
		most := kind{says: "any wire"}
		for _, k := range out {
			if k.role == ForWire && k.count > most.count {
				most = k
			}
		}
		most.role, most.count = ForSpare, w.Spares
		out = append(out, most)
	}
	return out
}

// specs are the specifications asked for, each once.
func specs(w Want) []string {
	seen := map[string]bool{}
	put := func(x Wire) {
		if x.Size != "" {
			seen[x.Spec] = true
		}
	}
	for _, x := range slices.Concat(w.Wires, w.Drains) {
		put(x)
	}
	for _, p := range w.Pairs {
		put(p.Wire)
	}
	out := make([]string, 0, len(seen))
	for s := range seen {
		out = append(out, s)
	}
	slices.Sort(out)
	return out
}

func kindOf(cat *catalogue.Catalogue, x Wire, r Role, several bool) kind {
	k := kind{role: r, over: x.OverMM, byOver: x.Size == "",
		from: catalogue.Origin{Source: "measured, or given", Standing: catalogue.House}}
	if !(k.over > 0) || math.IsInf(float64(k.over), 0) {
		k.over = 0
	}
	switch {
	case x.Size == "" && r == ForDrain:
		return kind{says: "unknown gauge", role: r}
	case x.Size == "":
		k.says = strings.TrimRight(strings.TrimRight(unit.Fixed(k.over, 2), "0"), ".") + " mm"
		return k
	}
	k.says = model.SizeWords(x.Size)
	if several && x.Spec != "" {
		k.says = x.Spec + " " + k.says
	}
	e, known := cat.Wire(x.Spec, x.Size)
	k.area, k.unread = e.AreaMM2, !known
	if k.over == 0 || k.over == e.OverMM {
		k.over, k.from = e.OverMM, catalogue.Origin{Source: e.Source, Standing: e.OverStanding}
	}
	if r == ForDrain {
		k.over = 0
	}
	return k
}
