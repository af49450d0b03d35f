// rigband-demo-maker LANGUAGE FILE: tells the demonstration in one language ("de") into a new file, without
// its photos. rigband-demo-maker --together BUNDLE FILE...: lays those of all languages together. Run when
// the program is built; the window opens copies of what is in the bundle.

#include "core/demo/bundle.h"
#include "core/demo/demo.h"
#include "core/store/store_file.h"

#include <cstdio>
#include <fstream>
#include <iterator>
#include <string_view>

namespace {

int tell(rig::demo::Language language, const char* path)
{
    const rig::SystemClock clock;
    const auto file = rig::StoreFile::open(path, rig::OpenAs::New, clock);
    const rig::Outcome built = file ? rig::buildDemo(*file.value(), language) : rig::Outcome{file.problem()};
    if (built)
        return 0;
    std::fprintf(stderr, "%s: %s\n", path, built.problem().detail.c_str());
    return 1;
}

int layTogether(const char* bundle, char** paths)
{
    std::vector<std::string> files;
    for (std::size_t i = 0; i < rig::demo::kLanguages.size(); ++i) {
        std::ifstream file{paths[i], std::ios::binary};
        files.emplace_back(std::istreambuf_iterator<char>{file}, std::istreambuf_iterator<char>{});
        if (!file || files.back().empty()) {
            std::fprintf(stderr, "%s: could not be read\n", paths[i]);
            return 1;
        }
    }
    std::ofstream out{bundle, std::ios::binary};
    out << rig::demo::bundled(files);
    if (out.flush())
        return 0;
    std::fprintf(stderr, "%s: could not be written\n", bundle);
    return 1;
}

} // namespace

int main(int argc, char* argv[])
{
    constexpr int kBeforeFiles = 3;
    const std::string_view first = argc > 1 ? argv[1] : "";
    if (first == "--together" && argc == kBeforeFiles + static_cast<int>(rig::demo::kLanguages.size()))
        return layTogether(argv[2], argv + kBeforeFiles);
    const auto language = rig::demo::languageOf(first);
    if (argc == kBeforeFiles && rig::demo::codeOf(language) == first)
        return tell(language, argv[2]);
    std::fputs("rigband-demo-maker en|de|fr FILE\nrigband-demo-maker --together BUNDLE EN DE FR\n", stderr);
    return 2;
}
