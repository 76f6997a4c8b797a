package compare

import (
	"bytes"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/file"
)

// BesideWires is what two harness files have other than what compare tells by what it means:
// lengths, lay-ups, covers, rules, and every other key of a wire, a unit or a termination. What
// feeds and cavities list follows from wires that moved, and is told where none did.
func BesideWires(a, b model.Harness, already []Difference) []Difference {
	of := func(what string) bool {
		return slices.ContainsFunc(already, func(d Difference) bool {
			return d.Of == what && (what != "wire" || d.Kind != Changed)
		})
	}
	told := map[string][]string{
		"wire":        {"signal", "from", "to", "spec", "size", "colour", "amps", "role"},
		"unit":        {"wires", "shield", "drain_from", "drain_to"},
		"feed":        {"amps"},
		"termination": {"insert", "gender", "reserved"},
		"splice":      {},
	}
	if of("fuse") || of("wire") {
		told["feed"] = append(told["feed"], "wires")
	}
	if of("wire") {
		told["termination"] = append(told["termination"], "cavities")
	}
	var out []Difference
	all := file.Differences(file.Document{Harness: a}, file.Document{Harness: b})
	for _, t := range all {
		word, _, _ := strings.Cut(t, " ")
		if keys, known := told[word]; known {
			_, rest, changed := strings.Cut(t, ": ") // else it is new or gone
			key, _, _ := strings.Cut(rest, " ")
			if !changed || slices.Contains(keys, key) {
				continue
			}
		}
		out = append(out, Difference{Kind: Changed, Of: word, Says: t})
	}
	if len(already)+len(out) > 0 {
		return out
	}
	// Nothing that means another thing: what is left is another spelling, or another order.
	for _, t := range all {
		word, _, _ := strings.Cut(t, " ")
		out = append(out, Difference{Kind: Changed, Of: word, Says: t})
	}
	if len(out) == 0 && !bytes.Equal(file.Encode(file.Document{Harness: a}), file.Encode(file.Document{Harness: b})) {
		out = append(out, Difference{Kind: Changed, Of: "file", What: "order",
			Says: "the tables of the file are in another order, and nothing else differs"})
	}
	return out
}
