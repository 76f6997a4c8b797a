package join

import (
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// roleOf is what a wire is for, where its name leaves no doubt.
func roleOf(it *draft.Item) model.Opt[model.Role] {
	if it.State == name.Spare {
		return model.Some(model.RoleSpare)
	}
	w := name.Words(table.Fold(it.Signal))
	if len(w) == 0 {
		return model.Opt[model.Role]{}
	}
	last := w[len(w)-1]
	switch {
	case len(w) > 1 && slices.Contains(w[:len(w)-1], "can") && slices.Contains([]string{"h", "l", "hi", "lo", "high", "low"}, last):
		return model.Some(model.RoleData)
	case len(w) == 1 && (strings.HasPrefix(last, "canh") || strings.HasPrefix(last, "canl")) && len(last) == 4:
		return model.Some(model.RoleData)
	case slices.Contains([]string{"ground", "gnd", "masse", "earth", "tierra", "massa"}, last):
		return model.Some(model.RoleGround)
	}
	return model.Opt[model.Role]{}
}
