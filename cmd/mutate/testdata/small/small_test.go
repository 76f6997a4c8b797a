package small

import "testing"

func TestAtLeast(t *testing.T) {
	if AtLeast(3) != 4 || AtLeast(4) != 4 || AtLeast(5) != 5 {
		t.Error("at least four")
	}
}

func TestHalf(t *testing.T) {
	if Half(8) != nil || Half(6) == nil {
		t.Error("a quarter")
	}
	if n, err := half(6); n != 3 || err != nil {
		t.Error("a half")
	}
}

func TestFind(t *testing.T) {
	if Find([][]int{{1}, {2, 0}, {0}}, "") != 1 {
		t.Error("the first")
	}
}

func TestSum(t *testing.T) {
	if Sum(1, 2) != 3 {
		t.Error("a sum")
	}
}
