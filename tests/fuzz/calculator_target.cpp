#include "app/calc/answer.h"
#include "tests/fuzz/always.h"
#include "tests/fuzz/targets.h"

#include <algorithm>

namespace rig::fuzz {

void calculator(std::string_view bytes)
{
    const std::size_t end = std::min(bytes.find('\n'), bytes.size());
    const auto kinds = calc::kinds();
    const auto kind = std::ranges::find(kinds, bytes.substr(0, end), &calc::Kind::name);
    if (kind == kinds.end())
        return;
    const calc::Answered answered = calc::answerText(*kind, bytes.substr(std::min(end + 1, bytes.size())));
    always(!answered.json.empty() || !answered.isWhole(), "nothing was answered, and nothing said of it");
    if (!answered.json.empty())
        always(nlohmann::json::accept(answered.json), "the answer is no JSON");
}

} // namespace rig::fuzz
