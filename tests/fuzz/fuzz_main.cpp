// One target under libFuzzer; which, the build says.

#include "tests/fuzz/targets.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const auto target =
        std::ranges::find(rig::fuzz::targets(), std::string_view{RIG_FUZZ_TARGET}, &rig::fuzz::Target::name);
    target->take({reinterpret_cast<const char*>(data), size});
    return 0;
}
