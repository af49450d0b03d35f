#include "tests/fault/scripted_rigging.h"

#include "core/airframe/id_source.h"
#include "core/store/connection.h"
#include "core/store/copies.h"
#include "core/store/values.h"
#include "tests/fault/file_bytes.h"

namespace rig::test {

namespace {

constexpr const char* kPair = "one of a pair";

// One window with the file open.
class Window
{
public:
    explicit Window(const Saving& saving) : m_saving{saving}, m_ids{saving.idSeed}
    {
        auto opened = StoreFile::open(saving.path, OpenAs::Existing, m_clock);
        if (!opened) {
            m_problems.push_back(opened.problem());
            return;
        }
        m_file = std::move(opened).value();
        m_records.emplace(*m_file, m_ids, m_clock);
        if (saving.setting)
            must(m_file->connection().run(saving.setting));
    }

    bool isOpen() const { return m_records.has_value(); }
    std::vector<Problem> problems() const { return m_problems; }

    void rig();
    void savePair();

private:
    template <typename SomeId> Outcome note(const Result<SomeId>& added)
    {
        if (!added)
            return added.problem();
        m_added.push_back(added.value().bytes);
        return Done{};
    }
    template <typename... Fact> bool press(const Fact&... fact)
    {
        return press([&] { return note(m_records->add(fact...)); });
    }
    template <typename Save> bool press(const Save& save) requires std::is_invocable_v<Save>;

    void rigCoupling(CouplingId coupling, FittingId fitting, RecordId record);
    Check check(CouplingId coupling, CheckKind kind, RecordId record) const;
    Reading reading(const char* text) const;
    Photo photo() const;
    RecordClose close(RecordId record) const;

    const Saving& m_saving;
    FixedClock m_clock;
    IdSource m_ids;
    std::unique_ptr<StoreFile> m_file;
    std::optional<Records> m_records;
    std::vector<IdBytes> m_added;
    std::vector<Problem> m_problems;
};

template <typename Save> bool Window::press(const Save& save) requires std::is_invocable_v<Save>
{
    for (int time = 0; time < 2; ++time) {
        m_added.clear();
        const Outcome saved = save();
        if (saved) {
            m_saving.acknowledge(m_added);
            return true;
        }
        m_problems.push_back(saved.problem());
    }
    return false;
}

Check Window::check(CouplingId coupling, CheckKind kind, RecordId record) const
{
    Check check;
    check.record = record;
    check.coupling = coupling;
    check.kind = kind;
    check.answer = Answer::Yes;
    check.person = m_saving.hangar.oren;
    check.when = m_clock.now();
    return check;
}

Reading Window::reading(const char* text) const
{
    Reading reading = m_saving.hangar.reading(between(500, 550), m_clock.now());
    reading.note = text;
    return reading;
}

Photo Window::photo() const
{
    Photo photo;
    photo.coupling = m_saving.hangar.leftAileron;
    photo.day = m_clock.now().localDay();
    photo.person = m_saving.hangar.oren;
    return photo;
}

RecordClose Window::close(RecordId record) const
{
    RecordClose close;
    close.record = record;
    close.closing = Closing::Complete;
    close.first = m_saving.hangar.oren;
    close.second = m_saving.hangar.vale;
    return close;
}

void Window::rigCoupling(CouplingId coupling, FittingId fitting, RecordId record)
{
    for (const CheckKind look : {CheckKind::BallInSocket, CheckKind::PlungerHome})
        press(check(coupling, look, record));
    Reading read = reading("");
    read.coupling = coupling;
    read.fitting = fitting;
    read.record = record;
    press(read, std::optional{Shown{}});
    press([&] {
        return m_records->together([&]() -> Outcome {
            if (Outcome pulled = note(m_records->add(check(coupling, CheckKind::Pull, record))); !pulled)
                return pulled;
            return note(m_records->add(check(coupling, CheckKind::Secured, record)));
        });
    });
}

void Window::savePair()
{
    press([&] {
        return m_records->together([&]() -> Outcome {
            if (Outcome first = note(m_records->add(reading(kPair), Shown{})); !first)
                return first;
            return note(m_records->add(reading(kPair), Shown{}));
        });
    });
}

void Window::rig()
{
    const Hangar& hangar = m_saving.hangar;
    if (!press(hangar.record(m_clock.now())))
        return;
    const RecordId record{m_added.front()};
    rigCoupling(hangar.leftAileron, hangar.leftFitting, record);
    rigCoupling(hangar.rightAileron, hangar.rightFitting, record);
    press(photo(), PhotoImage{{"\xff\xd8" + std::string(20'000, 'p') + "\xff\xd9"}});
    savePair();
    press(close(record));
}

} // namespace

bool isThorough()
{
    return qEnvironmentVariableIntValue("RIGBAND_THOROUGH") != 0;
}

FileToSaveIn::FileToSaveIn()
{
    m_store.close();
    m_bytes = bytesOf(path());
}

void FileToSaveIn::beginAgain(Copying copying) const
{
    const auto copies = copiesFolder(path());
    std::filesystem::remove_all(copies);
    std::filesystem::remove(path() + "-journal");
    writeBytes(path(), m_bytes);
    if (copying == Copying::Done) {
        std::filesystem::create_directory(copies);
        writeBytes((copies / "hangar 2026-05-02.rigband").string(), "");
    }
}

std::vector<Problem> saveRigging(const Saving& saving)
{
    Window window{saving};
    if (window.isOpen())
        window.rig();
    return window.problems();
}

std::vector<Problem> savePairs(const Saving& saving, int pairs)
{
    Window window{saving};
    for (int i = 0; i < pairs && window.isOpen(); ++i)
        window.savePair();
    return window.problems();
}

Kept keptIn(const std::string& path, const std::vector<IdBytes>& acknowledged)
{
    Kept kept;
    const auto opened = StoreFile::open(path, OpenAs::Existing, FixedClock{});
    if (!opened)
        return {static_cast<int>(acknowledged.size()), 1, describe(opened.problem())};
    StoreFile& file = *opened.value();
    const auto halves = [&kept](int found, const std::string& of) {
        if (found > 0 && kept.half == 0)
            kept.why = of;
        kept.half += found;
    };
    const auto known = [&halves](const auto& found, auto otherwise) {
        if (!found)
            halves(1, describe(found.problem()));
        return found ? found.value() : otherwise;
    };
    const auto count = [&](const QString& sql, const QVariantList& values = {}) {
        const auto counted = known(file.connection().integer(sql, values), std::optional<qlonglong>{});
        return static_cast<int>(counted.value_or(0));
    };
    for (const IdBytes& fact : acknowledged)
        kept.lost += 1 - count("SELECT count(*) FROM link WHERE fact = ?", {valueOf(fact)});
    halves(static_cast<int>(known(file.lookAtChain(), ChainState{}).faults), "the chain does not hold");
    halves(known(file.danglingReferences(), 0), "something names what is not there");
    halves(count("SELECT count(*) FROM reading WHERE id NOT IN (SELECT reading FROM shown)"),
           "a reading without what was shown");
    halves(count("SELECT count(*) FROM photo WHERE id NOT IN (SELECT photo FROM photo_image)"),
           "a photo without its picture");
    halves(count("SELECT count(*) % 2 FROM reading WHERE note = ?", {QString{kPair}}), "one of a pair alone");
    return kept;
}

} // namespace rig::test
