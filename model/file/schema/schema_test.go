package schema_test

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"contralay/model/file"
)

// Each field of each type of model is set somewhere in every-key.toml: a field
// that the schema forgets is found here.
func TestEveryFieldIsInTheSchema(t *testing.T) {
	text, err := os.ReadFile("../../../testdata/every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse(text, "every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	set, known := map[string]bool{}, map[string]bool{}
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Slice:
			for i := range v.Len() {
				walk(v.Index(i))
			}
		case reflect.Struct:
			for i := range v.NumField() {
				name := v.Type().Name() + "." + v.Type().Field(i).Name
				known[name] = true
				set[name] = set[name] || !v.Field(i).IsZero()
				if !strings.HasPrefix(v.Type().Name(), "Opt[") {
					walk(v.Field(i))
				}
			}
		}
	}
	walk(reflect.ValueOf(d.Harness))
	for name := range known {
		if !set[name] {
			t.Errorf("%s is never set", name)
		}
	}
}
