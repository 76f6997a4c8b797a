package outline_test

import (
	"testing"

	"contralay/model/shorttest"
)

func TestMain(m *testing.M) { shorttest.Main(m) }
