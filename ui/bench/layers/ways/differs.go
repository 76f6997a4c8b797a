package ways

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/whatif"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// What a way changes, in words.

// DiffersText is what a way changes, in as many words as the line has room for; the columns have the rest.
func DiffersText(m *desk.Model, name string, o Outcome, enter string) string {
	then := desk.Instead(m, o.Sheet)
	all := strings.Split(then.Tally().Differs(m.Tally(), m.Sys), ", ")
	if built := BuiltText(then); built != "" {
		all = slices.Insert(slices.DeleteFunc(all, func(part string) bool { return part == "tape round the centre" }), 0, built)
	}
	now := Present(m)
	if is := o.Figures; is.Over == now.Over && is.Sheath != now.Sheath && is.Sheathed.Set && now.Sheathed.Set {
		if all = sheathText(m, now, is); len(all) == 0 {
			all = []string{"the same figures"}
		}
	}
	if n := o.Figures.Stops - now.Stops; n > 0 {
		all = slices.Insert(all, 0, words.Plural(n, "stop", "stops")+" more than now")
	}
	text := name + ": " + all[0]
	for k, part := range all[1:] {
		rest := words.Either(k == len(all)-2, "", ", and more")
		if draw.Width(text+", "+part+rest) > m.W-2 {
			return text + ", and more"
		}
		text += ", " + part
	}
	if draw.Width(text+". "+enter) > m.W-2 {
		return text
	}
	return text + ". " + enter
}

// sheathText is how two sheaths of the same bundle differ.
func sheathText(m *desk.Model, now, is whatif.Figures) []string {
	var out []string
	if d := is.Sheathed.V - now.Sheathed.V; m.Sys.Diameter(is.Sheathed.V) != m.Sys.Diameter(now.Sheathed.V) {
		out = append(out, fmt.Sprintf("%s %s %s in it", m.Sys.Diameter(max(d, -d)), m.Sys.Name(),
			words.Either(d < 0, "thinner", "thicker")))
	}
	if d := is.SheathGram.V - now.SheathGram.V; is.SheathGram.Set && now.SheathGram.Set && unit.Fixed(max(d, -d), 0) != "0" {
		out = append(out, unit.Fixed(max(d, -d), 0)+" g "+words.Either(d < 0, "lighter", "heavier"))
	}
	return out
}
