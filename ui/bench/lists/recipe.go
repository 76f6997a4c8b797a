package lists

import (
	"fmt"
	"path/filepath"

	wirelistname "contralay/model/wirelist/name"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// What was said of a list, kept for the next revision of it.

// recipeRow keeps what was said for the next list of the kind.
func recipeRow(in *importing) desk.Row {
	n := len(in.Recipe.Columns) + len(in.Recipe.Tables) + len(in.Recipe.Sheets) + len(in.Recipe.Hidden)
	return desk.Row{Key: "recipe", Text: fmt.Sprintf("keep as a recipe: %s", words.Plural(n, "choice", "choices")),
		Detail: "Type a file name. contralay import --recipe uses it the next time",
		Field: &desk.Field{Label: "recipe, file name", Set: func(m *desk.Model, text string) error {
			if m.Cfg.WriteNew == nil {
				return fmt.Errorf("no file can be written here")
			}
			if text == "" {
				return fmt.Errorf("type the name of a file")
			}
			if err := m.Cfg.WriteNew(text, in.Recipe.Encode()); err != nil {
				return err
			}
			m.Tell("kept in " + text)
			return nil
		}}}
}

// useRow reads the list with what was said of an earlier one.
func useRow() desk.Row {
	typed := desk.Field{Label: "recipe, file name", Set: func(m *desk.Model, text string) error {
		in := opened(m).list
		switch {
		case in == nil:
			return fmt.Errorf("no list is open")
		case m.Cfg.ListBytes == nil:
			return fmt.Errorf("no file can be read here")
		case text == "":
			return fmt.Errorf("type the name of a file")
		}
		data, err := m.Cfg.ListBytes(text)
		if err != nil {
			return err
		}
		n := *in
		if n.Recipe, err = wirelistname.DecodeRecipe(filepath.Base(text), data); err != nil {
			return err
		}
		n.Before, n.Unit = in, n.Recipe.Unit
		opened(m).list = readList(m, n)
		m.Tell("read with " + filepath.Base(text) + ": " + makes(opened(m).list))
		return nil
	}}
	return desk.Row{Key: "use", Text: "use a recipe: what was said of an earlier list",
		Detail: "Enter lists the files. What does not fit this list is told in the report. Backspace undoes",
		Enter:  func(m *desk.Model) { m.AskFile("recipe", []string{".toml"}, typed) }}
}
