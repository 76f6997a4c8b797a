package column

import (
	"reflect"
	"testing"
)

// What one cell counts, a column counts: no count is forgotten.
func TestProfilesAdd(t *testing.T) {
	var one, sum Profile
	v := reflect.ValueOf(&one).Elem()
	for i := range v.NumField() {
		v.Field(i).SetInt(int64(i + 1))
	}
	one.Distinct = 0 // counted by the column itself
	sum.add(&one)
	sum.add(&one)
	for i, of := 0, reflect.ValueOf(sum); i < of.NumField(); i++ {
		if of.Field(i).Int() != 2*v.Field(i).Int() {
			t.Errorf("%s: %d of two", of.Type().Field(i).Name, of.Field(i).Int())
		}
	}
}
