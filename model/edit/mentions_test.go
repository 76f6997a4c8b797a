package edit_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"contralay/model/edit"
)

// ownIDs are the fields by which a thing is called, and others name it.
var ownIDs = []string{"Terminations.ID", "Breakouts.ID", "Splices.ID", "Wires.ID", "Feeds.ID", "Units.ID", "Branches.ID"}

// texts are the fields that hold text and name nothing of the harness, each with what it holds.
var texts = map[string]string{
	"Head.Name": "text", "Head.Number": "text", "Head.Revision": "text", "Head.Units": "mm or in", "Head.ListedFrom": "text",
	"Head.MockUp": "text", "Head.Note": "text",
	"Rules.Spec": "catalogue", "Rules.SizeMin": "a size", "Rules.FillerOf": "a material", "Rules.ColourStock": "colours",
	"Rules.Adhesive": "catalogue",
	"Reels.Spec":     "catalogue", "Reels.Size": "a size", "Parts.ID": "catalogue",
	"Terminations.Name": "text", "Terminations.Device": "text", "Terminations.Insert": "catalogue", "Terminations.Key": "text",
	"Terminations.Boot": "catalogue", "Terminations.Reserved": "cavities", "Terminations.Cavities": "cavities",
	"Terminations.Contacts": "sizes and cavities", "Terminations.Aliases": "cavities",
	"Breakouts.Name": "text", "Breakouts.Transition": "catalogue",
	"Splices.Part": "catalogue",
	"Wires.Signal": "text", "Wires.Spec": "catalogue", "Wires.Size": "a size", "Wires.Colour": "a code", "Wires.Note": "text",
	"Feeds.Name": "text", "Units.Name": "text", "Branches.Name": "text",
	"Branches.Layers.BindPart": "catalogue", "Branches.Covers.Part": "catalogue", "Branches.Asides.Name": "text",
	"Branches.Asides.Layers.BindPart": "catalogue", "Branches.Asides.Spec": "catalogue", "Branches.Asides.Sizes": "sizes",
	"Branches.Asides.Covers.Part": "catalogue",
	"Listed.Signal":               "text",
}

// leaves finds each text of a harness, with the fields that lead to it.
func leaves(v reflect.Value, path string, found func(path, text string)) {
	switch v.Kind() {
	case reflect.String:
		if v.Type() == reflect.TypeFor[string]() { // a kind is a type of its own, and no id
			found(path, v.String())
		}
	case reflect.Slice:
		if v.Len() == 0 {
			leaves(reflect.New(v.Type().Elem()).Elem(), path, found)
		}
		for k := range v.Len() {
			leaves(v.Index(k), path, found)
		}
	case reflect.Map:
		found(path, "")
		for it := v.MapRange(); it.Next(); {
			leaves(it.Key(), path, found)
			leaves(it.Value(), path, found)
		}
	case reflect.Struct:
		if v.NumField() == 2 && v.Type().Field(1).Name == "Set" { // what may be left out
			leaves(v.Field(0), path, found)
			return
		}
		for k := range v.NumField() {
			leaves(v.Field(k), strings.TrimPrefix(path+"."+v.Type().Field(k).Name, "."), found)
		}
	}
}

// Every text of a harness is an id, or may name one, or is a text that names nothing, or is of
// the record of a build; whoever adds a field says here or in mentions.go which. A text that is
// said to name nothing holds, in the file of every key, no id of a thing and no end of a wire.
func TestEveryFieldThatNamesIsInTheTable(t *testing.T) {
	h := everyKey(t)
	known := map[string]bool{}
	for _, noun := range edit.Nouns {
		for _, id := range edit.IDs(h, noun) {
			known[id] = true
		}
	}
	met := map[string]bool{}
	leaves(reflect.ValueOf(*h), "", func(path, text string) {
		met[path] = true
		_, isText := texts[path]
		switch {
		case strings.HasPrefix(path, "Builds."), slices.Contains(ownIDs, path), slices.Contains(edit.MentionPaths(), path):
		case !isText:
			t.Errorf("%s is in no list: does it name a thing of the harness?", path)
		case known[text] || known[strings.Split(text, ":")[0]] && strings.Contains(text, ":"):
			t.Errorf("%s holds %q, which is the id of a thing: it belongs into the table of mentions.go", path, text)
		}
	})
	for _, all := range [][]string{ownIDs, edit.MentionPaths()} {
		for _, path := range all {
			if !met[path] {
				t.Errorf("no harness has %s", path)
			}
		}
	}
	for path := range texts {
		if !met[path] {
			t.Errorf("no harness has %s", path)
		}
	}
}
