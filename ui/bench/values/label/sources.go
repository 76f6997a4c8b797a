package label

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/model"
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// What keys are chosen from: what the harness has, and what the catalogue has.

// These are choices that say no more than they are.
func These(ids ...string) []desk.Choice {
	out := make([]desk.Choice, 0, len(ids))
	for _, id := range ids {
		out = append(out, desk.Choice{Value: id, Says: id})
	}
	return out
}

// names are words of the trade that a name is made of; another is typed.
func names(of ...string) Source {
	return func(*desk.Model, schema.At) []desk.Choice { return These(of...) }
}

func letters(*desk.Model, schema.At) []desk.Choice { return These(strings.Split("ABCDEFGH", "")...) }

func specs(m *desk.Model, _ schema.At) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Wires {
		used[m.H.Wires[i].Spec]++
	}
	return counted(These(m.Sheet.Cat.Specs()...), used)
}

func counted(all []desk.Choice, used map[string]int) []desk.Choice {
	for k := range all {
		all[k].Used = used[all[k].Value]
	}
	return all
}

// sizes are the sizes of the specification of a record, or all.
func sizes(m *desk.Model, at schema.At) []desk.Choice {
	spec, _ := schema.Get(m.H, at, "spec").(string)
	return sized(m, m.Sheet.Cat.Sizes(spec))
}

func allSizes(m *desk.Model, _ schema.At) []desk.Choice {
	var all []string
	for _, spec := range m.Sheet.Cat.Specs() {
		for _, s := range m.Sheet.Cat.Sizes(spec) {
			if !slices.Contains(all, s) {
				all = append(all, s)
			}
		}
	}
	return sized(m, all)
}

// sizesHere are the sizes of the wires that run in the branch of a record.
func sizesHere(m *desk.Model, at schema.At) []desk.Choice {
	var all []string
	if at[0].Table != "branch" || at[0].Index >= len(m.Sheet.Branches) {
		return nil
	}
	for w := range m.Sheet.Wires {
		if s := m.H.Wires[w].Size; slices.Contains(m.Sheet.Wires[w].Path, at[0].Index) && !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	return sized(m, all)
}

func sized(m *desk.Model, all []string) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Wires {
		used[m.H.Wires[i].Size]++
	}
	out := These(all...)
	for k := range out {
		out[k].Says = paper.Size(&model.Wire{Size: out[k].Value})
	}
	return counted(out, used)
}

func colours(m *desk.Model, _ schema.At) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Wires {
		used[m.H.Wires[i].Colour.V]++
	}
	var codes []string
	for c := range 10 {
		codes = append(codes, fmt.Sprint(c))
	}
	for c := range 9 {
		codes = append(codes, fmt.Sprint(90+c)) // white with one stripe
	}
	out := These(codes...)
	for k := range out {
		out[k].Says = paper.Colour(out[k].Value)
	}
	return counted(out, used)
}

func inserts(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for _, id := range m.Sheet.Cat.InsertIDs() {
		c := desk.Choice{Value: id, Says: id}
		if e, ok := m.Sheet.Cat.Insert(id); ok {
			c.Says = fmt.Sprintf("%-8s %d cavities", id, e.Count())
		}
		out = append(out, c)
	}
	return out
}

func boots(m *desk.Model, _ schema.At) []desk.Choice { return These(m.Sheet.Cat.BootIDs()...) }

func transitions(m *desk.Model, _ schema.At) []desk.Choice {
	return append([]desk.Choice{{Value: "", Says: "none"}}, These(m.Sheet.Cat.TransitionIDs()...)...)
}

func spliceParts(m *desk.Model, _ schema.At) []desk.Choice { return These(m.Sheet.Cat.SpliceIDs()...) }

func contactSizes(m *desk.Model, _ schema.At) []desk.Choice {
	return These(m.Sheet.Cat.ContactSizes()...)
}

func tubes(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for _, kind := range m.Sheet.Cat.Kinds() {
		for _, t := range m.Sheet.Cat.TubesOf(kind) {
			out = append(out, desk.Choice{Value: t.ID, Says: t.ID})
		}
	}
	return out
}

func tubesAndBoots(m *desk.Model, at schema.At) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Terminations {
		used[m.H.Terminations[i].Boot.V]++
	}
	for i := range m.Sheet.Branches {
		used[m.Sheet.Branches[i].Sheath.Part]++
	}
	return counted(append(tubes(m, at), boots(m, at)...), used)
}

func named(id string, name model.Opt[string]) desk.Choice {
	return desk.Choice{Value: id, Says: strings.TrimSpace(id + "  " + name.V)}
}

func breakouts(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Breakouts {
		out = append(out, named(m.H.Breakouts[i].ID, m.H.Breakouts[i].Name))
	}
	return out
}

func places(m *desk.Model, at schema.At) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Terminations {
		out = append(out, named(m.H.Terminations[i].ID, m.H.Terminations[i].Name))
	}
	return append(out, breakouts(m, at)...)
}

func branches(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Branches {
		out = append(out, named(m.H.Branches[i].ID, m.H.Branches[i].Name))
	}
	return out
}

// meeting are the branches of the breakout that a splice is at.
func meeting(m *desk.Model, at schema.At) []desk.Choice {
	var out []desk.Choice
	for _, b := range m.Sheet.Index.Meeting(m.H.Splices[at[0].Index].At) {
		out = append(out, named(m.H.Branches[b].ID, m.H.Branches[b].Name))
	}
	return out
}

func allWires(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Wires {
		out = append(out, named(m.H.Wires[i].ID, m.H.Wires[i].Signal))
	}
	return out
}

// otherWires are the wires that could bring a current back, and none.
func otherWires(m *desk.Model, at schema.At) []desk.Choice {
	out := []desk.Choice{{Value: "", Says: "none"}}
	for _, c := range allWires(m, at) {
		if c.Value != m.H.Wires[at[0].Index].ID {
			out = append(out, c)
		}
	}
	return out
}

// pieces are what a layer may hold: what runs through its branch first.
func pieces(m *desk.Model, at schema.At) []desk.Choice {
	here := map[string]int{}
	if i := at[0].Index; i < len(m.Sheet.Branches) {
		for _, id := range m.Sheet.Branches[i].Components {
			here[id] = 1
		}
	}
	var out []desk.Choice
	for i := range m.H.Units {
		out = append(out, named(m.H.Units[i].ID, m.H.Units[i].Name))
	}
	out = append(out, allWires(m, at)...)
	for k := range out {
		out[k].Rank = here[out[k].Value]
	}
	return out
}

// cavities are those of a termination.
func cavities(m *desk.Model, at schema.At) []desk.Choice {
	if i := at[0].Index; i < len(m.Sheet.Terms) {
		return These(m.Sheet.Terms[i].Cavities...)
	}
	return nil
}

func cavityEnds(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for t := range m.H.Terminations {
		for _, c := range m.Sheet.Terms[t].Cavities {
			out = append(out, desk.Choice{Value: m.H.Terminations[t].ID + ":" + c, Says: m.H.Terminations[t].ID + ":" + c})
		}
	}
	return out
}

// ends are where a wire may end: free cavities first, then splices, then cavities that hold a wire.
func ends(m *desk.Model, at schema.At) []desk.Choice {
	var free, full []desk.Choice
	for t := range m.H.Terminations {
		for _, c := range m.Sheet.Terms[t].Cavities {
			text := m.H.Terminations[t].ID + ":" + c
			if slices.Contains(m.Sheet.Terms[t].Free, c) {
				free = append(free, desk.Choice{Value: text, Says: text})
			} else {
				full = append(full, desk.Choice{Value: text, Says: text + "   in use"})
			}
		}
	}
	for i := range m.H.Splices {
		free = append(free, desk.Choice{Value: m.H.Splices[i].ID, Says: "splice " + m.H.Splices[i].ID})
	}
	return append(free, full...)
}

func drains(m *desk.Model, at schema.At) []desk.Choice {
	return append(These("cut", "shell"), ends(m, at)...)
}

func feeds(m *desk.Model, _ schema.At) []desk.Choice {
	var out []desk.Choice
	for i := range m.H.Feeds {
		out = append(out, named(m.H.Feeds[i].ID, m.H.Feeds[i].Name))
	}
	return out
}

// signals are the nets of the harness by the name of their signal.
func signals(m *desk.Model, _ schema.At) []desk.Choice {
	var all []string
	for i := range m.H.Wires {
		if s := m.H.Wires[i].Signal.V; s != "" && !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	return These(all...)
}

// anything is whatever a deviation may be about.
func anything(m *desk.Model, at schema.At) []desk.Choice {
	return slices.Concat(branches(m, at), allWires(m, at), places(m, at))
}

// runSteps are the steps of the run of this harness, and those that the record of a build has.
func runSteps(m *desk.Model, at schema.At) []desk.Choice {
	var all []string
	if len(at) > 0 && at[0].Table == "build" && at[0].Index < len(m.H.Builds) {
		all = m.H.Builds[at[0].Index].Keys()
	}
	if len(m.H.Branches) > 0 {
		for _, s := range run.Run(m.Sheet) {
			if !slices.Contains(all, s.Key) {
				all = append(all, s.Key)
			}
		}
	}
	return These(all...)
}

// people are those whom the records of builds name.
func people(m *desk.Model, _ schema.At) []desk.Choice {
	var all []string
	add := func(who string) {
		if who != "" && !slices.Contains(all, who) {
			all = append(all, who)
		}
	}
	for i := range m.H.Builds {
		for _, s := range m.H.Builds[i].Signed {
			add(s.By)
		}
		for _, t := range m.H.Builds[i].Steps {
			add(t.By.V)
		}
	}
	return These(all...)
}

// lotParts are what a lot may be of: what the harness takes off the shelf.
func lotParts(m *desk.Model, _ schema.At) []desk.Choice {
	var all []string
	for _, r := range lists.ReelList(m.Sheet) {
		all = append(all, r.Spec+" "+r.Size)
	}
	for _, r := range lists.Bill(m.Sheet) {
		if r.Part != "" && !slices.Contains(all, r.Part) {
			all = append(all, r.Part)
		}
	}
	return These(all...)
}
