package calctest

import (
	"reflect"
	"slices"
	"testing"
)

// Pool is the values that each field has anywhere in the files of testdata: what a person
// would write there.
type Pool map[string][]reflect.Value

// Gather puts the values of a harness's fields into the pool, each once.
func (p Pool) Gather(name string, v reflect.Value) {
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
			p.Gather(v.Type().Name()+"."+v.Type().Field(k).Name, v.Field(k))
		}
	case reflect.Slice:
		for k := range v.Len() {
			p.Gather(name+"[]", v.Index(k))
		}
	}
}

// isOpt reports whether a type is a model.Opt.
func isOpt(of reflect.Type) bool {
	return of.Kind() == reflect.Struct && of.NumField() == 2 && of.Field(0).Name == "V" && of.Field(1).Name == "Set"
}

// Variants are what a value could be instead, each different from it in one field.
func (p Pool) Variants(t testing.TB, name string, v reflect.Value, yield func(field string, to reflect.Value)) {
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
		p.Variants(t, name+"?", v.FieldByName("V"), func(_ string, to reflect.Value) {
			n := copied()
			n.FieldByName("V").Set(to)
			n.FieldByName("Set").SetBool(true)
			yield(name, n)
		})
	case v.Kind() == reflect.Struct:
		for k := range v.NumField() {
			p.Variants(t, v.Type().Name()+"."+v.Type().Field(k).Name, v.Field(k), func(field string, to reflect.Value) {
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
			p.Variants(t, name+"[]", v.Index(k), func(field string, to reflect.Value) {
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
