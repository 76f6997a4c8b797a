package calc_test

import (
	"flag"
	"fmt"
	"path/filepath"
	"reflect"
	"slices"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
)

// pool is the values that each field has anywhere in the files of testdata: what a person
// would write there.
type pool map[string][]reflect.Value

// gather puts the values of a harness's fields into the pool, each once.
func (p pool) gather(name string, v reflect.Value) {
	if v.Kind() != reflect.Slice || v.Len() > 0 {
		const few = 4
		if have := p[name]; len(have) < few && !slices.ContainsFunc(have, func(o reflect.Value) bool {
			return reflect.DeepEqual(o.Interface(), v.Interface())
		}) {
			p[name] = append(have, v)
		}
	}
	switch v.Kind() {
	case reflect.Struct:
		for k := range v.NumField() {
			p.gather(v.Type().Name()+"."+v.Type().Field(k).Name, v.Field(k))
		}
	case reflect.Slice:
		for k := range v.Len() {
			p.gather(name+"[]", v.Index(k))
		}
	}
}

// isOpt reports whether a type is a model.Opt.
func isOpt(of reflect.Type) bool {
	return of.Kind() == reflect.Struct && of.NumField() == 2 && of.Field(0).Name == "V" && of.Field(1).Name == "Set"
}

// variants are what a value could be instead, each different from it in one field.
func (p pool) variants(t *testing.T, name string, v reflect.Value, yield func(field string, to reflect.Value)) {
	for _, o := range p[name] {
		if !reflect.DeepEqual(o.Interface(), v.Interface()) {
			yield(name, o)
		}
	}
	copied := func() reflect.Value {
		n := reflect.New(v.Type()).Elem()
		n.Set(v)
		return n
	}
	switch {
	case isOpt(v.Type()):
		if v.FieldByName("Set").Bool() {
			yield(name, reflect.Zero(v.Type()))
		}
		p.variants(t, name+"?", v.FieldByName("V"), func(_ string, to reflect.Value) {
			n := copied()
			n.FieldByName("V").Set(to)
			n.FieldByName("Set").SetBool(true)
			yield(name, n)
		})
	case v.Kind() == reflect.Struct:
		for k := range v.NumField() {
			p.variants(t, v.Type().Name()+"."+v.Type().Field(k).Name, v.Field(k), func(field string, to reflect.Value) {
				n := copied()
				n.Field(k).Set(to)
				yield(field, n)
			})
		}
	case v.Kind() == reflect.Slice:
		if v.Len() == 0 {
			return
		}
		yield(name, v.Slice(0, v.Len()-1))
		for _, k := range slices.Compact([]int{0, v.Len() / 2, v.Len() - 1}) {
			p.variants(t, name+"[]", v.Index(k), func(field string, to reflect.Value) {
				n := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
				reflect.Copy(n, v)
				n.Index(k).Set(to)
				yield(field, n)
			})
		}
	case v.Kind() == reflect.Map:
		if v.Len() > 0 {
			yield(name, reflect.Zero(v.Type()))
		}
	case v.Kind() == reflect.Bool:
		yield(name, reflect.ValueOf(!v.Bool()).Convert(v.Type()))
	case v.CanInt():
		yield(name, reflect.ValueOf(v.Int()+1).Convert(v.Type()))
	case v.CanFloat():
		yield(name, reflect.ValueOf(v.Float()*1.5+1).Convert(v.Type()))
	case v.Kind() == reflect.String:
		yield(name, reflect.ValueOf(v.String()+"x").Convert(v.Type()))
	default:
		t.Fatalf("%s is a %s, which this test cannot change: teach it", name, v.Kind())
	}
}

var everyValue = flag.Bool("every-value", false, "change each field to every value that is known of it, not to the first five")

// Whichever field of a harness changes, a sheet built on the one before it is the one built
// from nothing; and so is the way back. A field that a phase reads and its comparison
// forgets (phase/*/reuse.go) is found here.
func TestNoFieldIsForgotten(t *testing.T) {
	cat := calctest.Catalogue(t)
	files, err := filepath.Glob(filepath.Join("..", "testdata", "*.toml"))
	if err != nil || len(files) < 5 {
		t.Fatal(files, err)
	}
	all := pool{}
	for _, path := range files {
		all.gather("Harness", reflect.ValueOf(*calctest.Load(t, filepath.Base(path))))
	}
	starts := map[string]*model.Harness{
		"a capped spare": calctest.Parse(t, fmt.Sprintf(calctest.CappedSpare, "from = \"P:2\"\ncapped_at = \"J\"\nfold_mm = 60")),
	}
	for _, name := range []string{"example", "feeds", "every-key"} {
		starts[name] = calctest.Load(t, name+".toml")
	}
	tried, felt := map[string]int{}, map[string]bool{}
	for name, h := range starts {
		complete := calc.Complete(h, cat, nil)
		was := calc.Build(h, cat, withProposals(complete.Proposals))
		all.variants(t, "", reflect.ValueOf(*h), func(field string, to reflect.Value) {
			changed := to.Interface().(model.Harness)
			if len(changed.Check()) > 0 {
				return // no file has it, and no edit makes it
			}
			if tried[name+field]++; !*everyValue && tried[name+field] > 5 {
				return
			}
			built := calc.Build(&changed, cat, complete)
			fresh := calc.Build(&changed, cat, withProposals(complete.Proposals))
			at := place{t, fmt.Sprintf("%s, %s changed", name, field)}
			sameSheets(at, built, fresh)
			back := place{t, fmt.Sprintf("%s, %s changed and changed back", name, field)}
			sameSheets(back, calc.Build(h, cat, built), was)
			if !reflect.DeepEqual(fresh.Snags, was.Snags) || !reflect.DeepEqual(fresh.Wires, was.Wires) ||
				!reflect.DeepEqual(fresh.Branches, was.Branches) {
				felt[field] = true
			}
		})
	}
	if len(felt) < 100 {
		t.Errorf("only %d fields change a sheet: the test does not reach what it is for", len(felt))
	}
}

// place is a test that says where it is.
type place struct {
	*testing.T
	where string
}

func (p place) Fatalf(format string, args ...any) {
	p.T.Helper()
	p.T.Fatalf(p.where+": "+format, args...)
}
