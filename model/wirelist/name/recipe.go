package name

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"contralay/model/visible"
	"contralay/model/where"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Recipe is what a person said about lists of one kind, kept for the next time.
type Recipe struct {
	Columns   map[string]Field // by heading, or "#3" for the third column
	HeaderRow int              // row that holds the headings; 0: found by meaning, or none where columns have numbers
	Unit      value.LengthUnit // of lengths that state none
	Mark      value.Mark       // of decimals; MarkUnknown: found
	Language  string           // "en", "de", "fr", "es", "it"; "": found
	Spec      string           // of wires that state none, AWG
	Metric    string           // of wires that state none, mm²
	Connector string           // of a pin table that names none
	Sheets    []string         // sheets of a workbook that are left out
	Hidden    []string         // sheets that their workbook does not show, and that are read
	Tables    []TableSaid      // what is said about single tables

	Colours map[string]string // words of colours that the program does not have, and what they are in English
}

// DecodeRecipe reads a recipe. It is strict, as the file of a harness is: an unknown
// key, a value of the wrong kind and a meaning that is none are errors that name file,
// key and what is allowed.
func DecodeRecipe(name string, data []byte) (Recipe, error) {
	refuse := func(key, says, allowed string) error {
		return &table.Error{Place: table.Place{File: name}, Says: strings.TrimPrefix(key+": ", ": ") + says, Allowed: allowed}
	}
	if len(data) > 1<<20 {
		return Recipe{}, refuse("", fmt.Sprintf("is %d bytes, which is no recipe", len(data)), "up to 1048576")
	}
	if found := where.Scan(string(data)); found.TooDeep > 0 {
		return Recipe{}, &table.Error{Place: table.Place{File: name, Row: found.TooDeep},
			Says: "brackets in brackets, or the parts of a key, are nested too deep", Allowed: strconv.Itoa(where.MaxDeep)}
	}
	var raw map[string]any
	if _, err := toml.Decode(string(data), &raw); err != nil {
		var at toml.ParseError
		if errors.As(err, &at) {
			return Recipe{}, &table.Error{Place: table.Place{File: name, Row: at.Position.Line}, Says: "not TOML: " + at.Message}
		}
		return Recipe{}, refuse("", "not TOML: "+err.Error(), "")
	}
	var r Recipe
	for _, key := range slices.Sorted(maps.Keys(raw)) {
		var err error
		switch key {
		case "columns":
			r.Columns, err = decodeColumns(raw[key], refuse, key)
		case "colours":
			r.Colours, err = colourWords(raw[key], refuse)
		case "table":
			r.Tables, err = decodeTables(raw[key], refuse)
		case "sheets_left_out":
			r.Sheets, err = texts(raw[key], refuse, key)
		case "hidden_sheets_read":
			r.Hidden, err = texts(raw[key], refuse, key)
		case "header_row":
			n, ok := raw[key].(int64)
			if !ok || n < 0 || n > 1_000_000 {
				return Recipe{}, refuse(key, fmt.Sprintf("%v is no row", raw[key]), "a whole number from 0 to 1000000")
			}
			r.HeaderRow = int(n)
		case "length_unit":
			r.Unit, err = oneOf(raw[key], refuse, key, value.LengthUnit("mm"), "cm", "m", "in", "ft")
		case "decimal":
			var s string
			s, err = oneOf(raw[key], refuse, key, "point", "comma")
			r.Mark = map[string]value.Mark{"point": value.MarkPoint, "comma": value.MarkComma}[s]
		case "language":
			r.Language, err = oneOf(raw[key], refuse, key, "en", "de", "fr", "es", "it")
		case "spec":
			r.Spec, err = oneLine(raw[key], refuse, key)
		case "spec_metric":
			r.Metric, err = oneLine(raw[key], refuse, key)
		case "connector":
			r.Connector, err = oneLine(raw[key], refuse, key)
		default:
			err = refuse(key, "unknown key", "colours, columns, connector, decimal, header_row, hidden_sheets_read, "+
				"language, length_unit, "+
				"sheets_left_out, spec, spec_metric, table")
		}
		if err != nil {
			return Recipe{}, err
		}
	}
	return r, nil
}

// colourWords reads the words of colours of a recipe, each with what it is in English.
func colourWords(raw any, refuse func(key, says, allowed string) error) (map[string]string, error) {
	words, ok := raw.(map[string]any)
	if !ok {
		return nil, refuse("colours", "is no table", `words and what they are, "bordeaux" = "dark red"`)
	}
	all := map[string]string{}
	for _, word := range slices.Sorted(maps.Keys(words)) {
		meant, _ := words[word].(string)
		if c, ok := value.ParseColour(meant, ""); !ok || len(c) == 0 || strings.Trim(meant, "0123456789-/") == "" {
			return nil, refuse("colours."+strconv.Quote(word), fmt.Sprintf("%v is no colour", words[word]),
				`a colour in English, "dark red"`)
		}
		all[table.Fold(word)] = meant
	}
	return all, nil
}

// InEnglish puts the English word for each word of a colour that the recipe knows.
func (r *Recipe) InEnglish(cell string) string {
	if r == nil || len(r.Colours) == 0 {
		return cell
	}
	if meant, ok := r.Colours[table.Fold(strings.TrimSpace(cell))]; ok {
		return meant
	}
	parts := strings.FieldsFunc(cell, func(c rune) bool { return strings.ContainsRune(" /-+,", c) })
	for _, p := range parts {
		if meant, ok := r.Colours[table.Fold(p)]; ok {
			cell = strings.Replace(cell, p, meant, 1)
		}
	}
	return cell
}

// oneOf reads a text that is one of some words, or any where none are given.
func oneOf[T ~string](raw any, refuse func(key, says, allowed string) error, key string, words ...T) (T, error) {
	s, ok := raw.(string)
	if ok && (len(words) == 0 && s != "" || slices.Contains(words, T(s))) {
		return T(s), nil
	}
	allowed := make([]string, len(words))
	for i, w := range words {
		allowed[i] = string(w)
	}
	if len(words) == 0 {
		allowed = []string{"a text that is not empty"}
	}
	return "", refuse(key, fmt.Sprintf("%v is not one of the words", raw), strings.Join(allowed, ", "))
}

// oneLine reads a text that goes into a harness: it must not hold what its file would refuse.
func oneLine(raw any, refuse func(key, says, allowed string) error, key string) (string, error) {
	s, err := oneOf[string](raw, refuse, key)
	if err == nil {
		if says, allowed := visible.Fault(s, true); says != "" {
			return "", refuse(key, says, allowed)
		}
	}
	return s, err
}

func fieldList() string {
	var all []string
	for _, f := range Fields() {
		all = append(all, string(f))
	}
	return strings.Join(all, ", ")
}

// OfColumns is the recipe where it says anything of columns; else nil, as none was given.
func (r *Recipe) OfColumns() *Recipe {
	if r == nil || len(r.Columns) == 0 && r.HeaderRow == 0 && r.Mark == value.MarkUnknown {
		return nil
	}
	return r
}

// Encode writes a recipe; DecodeRecipe reads it back as the same.
func (r Recipe) Encode() []byte {
	var b strings.Builder
	b.WriteString("# How to read a wire list: what its columns mean.\n")
	text := func(key, v string) {
		if v != "" {
			fmt.Fprintf(&b, "%s = %s\n", key, quoteTOML(v))
		}
	}
	if r.HeaderRow > 0 {
		fmt.Fprintf(&b, "header_row = %d\n", r.HeaderRow)
	}
	text("length_unit", string(r.Unit))
	text("decimal", map[value.Mark]string{value.MarkPoint: "point", value.MarkComma: "comma"}[r.Mark])
	text("language", r.Language)
	text("spec", r.Spec)
	text("spec_metric", r.Metric)
	text("connector", r.Connector)
	if len(r.Sheets) > 0 {
		fmt.Fprintf(&b, "sheets_left_out = %s\n", quoteList(r.Sheets))
	}
	if len(r.Hidden) > 0 {
		fmt.Fprintf(&b, "hidden_sheets_read = %s\n", quoteList(r.Hidden))
	}
	if r.Colours != nil {
		b.WriteString("\n[colours]\n")
		for _, word := range slices.Sorted(maps.Keys(r.Colours)) {
			fmt.Fprintf(&b, "%s = %s\n", quoteTOML(word), quoteTOML(r.Colours[word]))
		}
	}
	if r.Columns != nil {
		b.WriteString("\n[columns]\n")
		for _, head := range slices.Sorted(maps.Keys(r.Columns)) {
			fmt.Fprintf(&b, "%s = %s\n", quoteTOML(head), quoteTOML(string(r.Columns[head])))
		}
	}
	r.encodeTables(&b)
	return []byte(b.String())
}

// quoteTOML writes a basic string.
func quoteTOML(s string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range strings.ToValidUTF8(s, "\ufffd") {
		switch {
		case r == '"' || r == '\\':
			b.WriteString(`\` + string(r))
		case r < 0x20 || r == 0x7f:
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	b.WriteByte('"')
	return b.String()
}

// quoteList writes a list of basic strings.
func quoteList(all []string) string {
	quoted := make([]string, len(all))
	for i, s := range all {
		quoted[i] = quoteTOML(s)
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}
