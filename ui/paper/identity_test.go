package paper

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file/schema"
	"contralay/model/shorttest"
	"contralay/ui/paper/origin"
)

// prints remembers every sheet that was made, by its identity.
type prints map[string]print

type print struct {
	from       string
	made, page [sha256.Size]byte // of what it was made from, and of what it says
}

// put fails where another sheet has the same identity: one with other words on it, or one that
// was made from something else.
func (p prints) put(t *testing.T, from, made string, s Sheet) {
	t.Helper()
	page := string(bytes.ReplaceAll(s.HTML, []byte(s.Identity), nil))
	for _, l := range s.Lists {
		l.Sheet = ""
		text, err := CSV(l)
		if err != nil {
			t.Fatal(err)
		}
		page += string(text)
	}
	now := print{from, sha256.Sum256([]byte(made)), sha256.Sum256([]byte(page))}
	if was, taken := p[s.Identity]; taken && (was.page != now.page || was.made != now.made) {
		t.Errorf("%s and %s are one sheet, %s", was.from, from, s.Identity)
	}
	p[s.Identity] = now
}

// Two different sheets never carry one identity: whichever field of a harness, an entry, a
// correction or of what a sheet says of itself is another one, so is the identity. The same
// sheet made twice has the same.
func TestNoTwoSheetsHaveOneIdentity(t *testing.T) {
	cat := calctest.Catalogue(t)
	all := calctest.Pool{}
	files, err := filepath.Glob("../../testdata/*.toml")
	if err != nil || len(files) < 5 {
		t.Fatal(files, err)
	}
	for _, path := range files {
		all.Gather("Harness", reflect.ValueOf(*calctest.Load(t, filepath.Base(path))))
	}
	seen, fields, sums := prints{}, map[string]bool{}, map[*catalogue.Catalogue]string{}
	make := func(from string, h *model.Harness, cat *catalogue.Catalogue, prior *sheet.Sheet, meta Meta) Sheet {
		t.Helper()
		s := calc.Build(h, cat, &sheet.Sheet{H: &model.Harness{}, Proposals: prior.Proposals})
		out, err := Make(s, meta)
		if err != nil {
			t.Fatalf("%s: %v", from, err)
		}
		if _, ok := sums[cat]; !ok {
			sum, learned := cat.Sum(), catalogue.SumOfCorrections(cat.InForce())
			sums[cat] = string(sum[:]) + string(learned[:])
		}
		seen.put(t, from, schema.Text(h)+sums[cat], out)
		return out
	}
	long := shorttest.Long()                   // every field; else one of twelve
	starts := []string{"example", "every-key"} // of the large one the fields that the small one has not
	if testing.Short() {
		starts = starts[:1]
	}
	for _, name := range starts {
		h := calctest.Load(t, name+".toml")
		complete := calc.Complete(h, cat, nil)
		was := make(name, h, cat, complete, Meta{})
		if again := make(name, h, cat, complete, Meta{}); again.Identity != was.Identity || !bytes.Equal(again.HTML, was.HTML) {
			t.Errorf("%s twice: %s and %s", name, was.Identity, again.Identity)
		}
		text := schema.Text(h)
		all.Variants(t, "", reflect.ValueOf(*h), func(field string, to reflect.Value) {
			changed := to.Interface().(model.Harness)
			if fields[field] || len(changed.Check()) > 0 || schema.Text(&changed) == text {
				return
			}
			fields[field] = true
			if !long && len(fields)%12 != 0 {
				return
			}
			if got := make(name+" "+field, &changed, cat, complete, Meta{}); got.Identity == was.Identity {
				t.Errorf("%s with another %s is still %s", name, field, got.Identity)
			}
		})
		// What was learned, and an entry that no sheet shows.
		learned := catalogue.Merge(cat,
			&catalogue.Catalogue{Corrections: []catalogue.Correction{{Of: "over, 2 layers", Bias: 0.01, Readings: 12}}})
		other := catalogue.Merge(cat, &catalogue.Catalogue{Boots: map[string]catalogue.Boot{"own": {ID: "own"}}})
		for what, c := range map[string]*catalogue.Catalogue{"a correction": learned, "an entry": other} {
			if got := make(name+" "+what, h, c, complete, Meta{}); got.Identity == was.Identity {
				t.Errorf("%s with %s more is still %s", name, what, got.Identity)
			}
		}
	}
	if len(fields) < 150 && !testing.Short() {
		t.Errorf("only %d fields were changed: the test does not reach what it is for", len(fields))
	}
	// What a sheet says of itself.
	h := calctest.Load(t, "example.toml")
	complete := calc.Complete(h, cat, nil)
	was := make("example", h, cat, complete, Meta{})
	meta := Meta{}
	var try func(v reflect.Value, name string)
	try = func(v reflect.Value, name string) {
		for k := range v.NumField() {
			meta = Meta{}
			name := name + " " + v.Type().Field(k).Name
			switch v.Field(k).Kind() {
			case reflect.Bool:
				v.Field(k).SetBool(true)
			case reflect.String:
				v.Field(k).SetString("x")
			case reflect.Struct:
				try(v.Field(k), name)
				continue
			default:
				t.Fatalf("%s: teach the test", name)
			}
			if got := make("example"+name, h, cat, complete, meta); got.Identity == was.Identity {
				t.Errorf("with another%s it is still %s", name, got.Identity)
			}
		}
	}
	try(reflect.ValueOf(&meta).Elem(), "")
}

// Every page and every list say number, revision and identity; the foot of each page its day and file; the
// last page says what the set was made from, part by part.
func TestSheetSaysWhatItWasMadeFrom(t *testing.T) {
	cat := catalogue.Merge(calctest.Catalogue(t), &catalogue.Catalogue{Corrections: []catalogue.Correction{
		{Of: "over, 2 layers", Bias: 0.01}, {Of: "over, 3 layers", Bias: 0.02}, {Of: "over, 2 layers", Withdrawn: true}}})
	s := calc.Complete(calctest.Load(t, "demo.toml"), cat, nil)
	out, err := Make(s, Meta{On: "2026-05-11", Hash: "sha256 0123456789ab", File: "demo.toml", Shop: "shop.toml"})
	if err != nil {
		t.Fatal(err)
	}
	o := origin.Of(s)
	if o.Learned() != "1 correction "+o.Corrections || len(o.Corrections) != 12 || len(o.Harness) != 12 || len(o.Catalogue) != 12 {
		t.Errorf("%+v", o)
	}
	page := string(out.HTML)
	sheets := strings.Split(page, `<section class="page">`)[1:]
	if len(sheets) != len(out.Pages.Pages) || len(sheets) < 5 {
		t.Errorf("%d pages of HTML, %d laid", len(sheets), len(out.Pages.Pages))
	}
	for k, text := range sheets {
		_, head, _ := strings.Cut(text, "<header>")
		head, body, _ := strings.Cut(head, "</header>")
		for _, part := range []string{"HC2-ENG-01", "rev C", "SERIAL", "QTY", out.Identity,
			fmt.Sprintf("page %d of %d", k+1, len(sheets))} {
			if !strings.Contains(head, part) {
				t.Errorf("the head of page %d lacks %q: %s", k+1, part, head)
			}
		}
		_, foot, _ := strings.Cut(body, "<footer>")
		for _, part := range []string{"2026-05-11", "file demo.toml", "sha256 0123456789ab", "A planning aid, not an approval."} {
			if !strings.Contains(foot, part) {
				t.Errorf("the foot of page %d lacks %q: %s", k+1, part, foot)
			}
		}
	}
	_, from, _ := strings.Cut(words(page), "Made from file")
	for _, part := range []string{"sha256 0123456789ab", o.Harness, o.Catalogue, o.Learned(), origin.Release, "demo.toml",
		"then shop.toml"} {
		if !strings.Contains(from, part) {
			t.Errorf("what it was made from lacks %q", part)
		}
	}
	if len(out.Lists)+len(out.Without) != 23 {
		t.Errorf("%d lists, and %d without a row", len(out.Lists), len(out.Without))
	}
	for _, l := range out.Lists {
		text, err := CSV(l)
		if err != nil {
			t.Fatal(err)
		}
		lines := strings.Split(strings.TrimSuffix(string(text), "\r\n"), "\r\n")
		if !strings.HasSuffix(lines[0], ",build sheet") {
			t.Errorf("%s: %s", l.File, lines[0])
		}
		if says := `,"HC2-ENG-01 rev C, identity ` + out.Identity + `"` + "\r\n"; strings.Count(string(text), says) != len(l.Filed.Rows) {
			t.Errorf("%s: %d of %d rows say which sheet they are of", l.File, strings.Count(string(text), says), len(l.Filed.Rows))
		}
	}
}
