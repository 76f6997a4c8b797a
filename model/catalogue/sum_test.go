package catalogue

import (
	"reflect"
	"testing"
)

// Whatever is changed in an entry, the sum is another one.
func TestSumHoldsEveryField(t *testing.T) {
	c, err := Default()
	if err != nil {
		t.Fatal(err)
	}
	c.Boots["own"] = Boot{ID: "own"}
	c.Transitions["own"] = Transition{ID: "own", Outlets: []Outlet{{1, 2, 3}}}
	c.Corrections = []Correction{{Of: "over, 2 layers", Bias: 0.01}}
	was := map[[32]byte]string{c.Sum(): "nothing"}
	corrections := map[[32]byte]string{SumOfCorrections(c.InForce()): "nothing"}
	of := reflect.TypeOf(*c)
	for k := range of.NumField() {
		if name := of.Field(k).Name; name == "People" || name == "Instruments" || name == "Stock" {
			continue // no figure goes by them: TestPeopleAndInstruments, TestStock
		}
		field := reflect.ValueOf(c).Elem().Field(k)
		var entry reflect.Value // a copy that can be changed
		put := func() {}
		switch field.Kind() {
		case reflect.Map:
			if field.Len() == 0 {
				t.Fatalf("%s is empty: the test does not reach it", of.Field(k).Name)
			}
			iter := field.MapRange()
			iter.Next()
			key := iter.Key()
			entry = reflect.New(field.Type().Elem()).Elem()
			entry.Set(field.MapIndex(key))
			put = func() { field.SetMapIndex(key, entry) }
		case reflect.Slice:
			entry = field.Index(0)
		default:
			t.Fatalf("%s is a %s: teach the test", of.Field(k).Name, field.Kind())
		}
		eachLeaf(t, of.Field(k).Name, entry, func(name string, leaf reflect.Value) {
			old := reflect.New(leaf.Type()).Elem()
			old.Set(leaf)
			another(t, name, leaf)
			put()
			sum, in := c.Sum(), was
			if of.Field(k).Name == "Corrections" {
				sum, in = SumOfCorrections(c.InForce()), corrections
			}
			if before, twice := in[sum]; twice {
				t.Errorf("%s changed has the sum of %s changed", name, before)
			}
			in[sum] = name
			leaf.Set(old)
			put()
		})
	}
	if len(was) < 90 || len(corrections) < 8 {
		t.Errorf("%d and %d fields changed: the test does not reach them", len(was), len(corrections))
	}
}

// eachLeaf calls do with every field of a value that holds no others.
func eachLeaf(t *testing.T, name string, v reflect.Value, do func(name string, leaf reflect.Value)) {
	switch v.Kind() {
	case reflect.Struct:
		for k := range v.NumField() {
			eachLeaf(t, name+"."+v.Type().Field(k).Name, v.Field(k), do)
		}
	case reflect.Slice:
		if v.Len() > 0 {
			n := reflect.MakeSlice(v.Type(), v.Len(), v.Len()) // nothing else shares it
			reflect.Copy(n, v)
			v.Set(n)
			eachLeaf(t, name+"[0]", v.Index(0), do)
			return
		}
		do(name, v)
	default:
		do(name, v)
	}
}

// another puts another value into a field.
func another(t *testing.T, name string, v reflect.Value) {
	switch {
	case v.Kind() == reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
	case v.Kind() == reflect.Bool:
		v.SetBool(!v.Bool())
	case v.CanInt():
		v.SetInt(v.Int() + 1)
	case v.CanFloat():
		v.SetFloat(v.Float() + 1)
	case v.Kind() == reflect.String:
		v.SetString(v.String() + "x")
	default:
		t.Fatalf("%s is a %s: teach the test", name, v.Kind())
	}
}
