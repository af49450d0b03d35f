#pragma once

#include "app/widgets/how_far.h"

#include <QObject>

#include <functional>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace rig {

// Work behind a page, on a thread of its own: value in, value out. The page stays as it is meanwhile and
// takes every press. Only the newest is handed over; what was begun before it is stopped.
class WorkBehind : public QObject
{
    Q_OBJECT

public:
    explicit WorkBehind(QObject* parent = nullptr);
    ~WorkBehind() override; // stops it, and waits until it has ended

    // `make` has all it works on in itself, and shares with no thread what changes, a cache included; it
    // touches no widget and no QPixmap. What it makes is handed to `take` in this thread.
    template <typename Make, typename Take> void begin(Make make, Take take)
    {
        using Made = decltype(make(std::declval<Progress&>()));
        auto made = std::make_shared<std::optional<Made>>();
        run([made, make = std::move(make)](Progress& progress) { made->emplace(make(progress)); },
            [made, take = std::move(take)] { take(std::move(**made)); });
    }

    void stop(); // what is made is no longer wanted
    bool isGoing() const;
    const HowFar* howFar() const; // null: nothing goes on
    // Waits for it here; it is handed over before this comes back. For whoever looks at finished pages only:
    // tests and pictures.
    void finish();
    static void finishAll(const QObject& in);

signals:
    // Somebody waits here for what is about to begin, too.
    void finishAsked();

private:
    struct Job;

    void run(std::function<void(Progress&)> make, std::function<void()> take);
    void end(int number);

    std::vector<std::unique_ptr<Job>> m_jobs; // whose threads have not ended; the last may be wanted
    int m_begun = 0;
};

} // namespace rig
