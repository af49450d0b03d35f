#pragma once

#include "app/pages/setup/baseline_day_presenter.h"
#include "app/theme/theme.h"
#include "app/widgets/gap_strip_widget.h"

#include <QFrame>

class QKeyEvent;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

class ChoiceBox;
class ChoiceGrid;
class LeafRow;
class Prompts;

// What both cards of the bench work with. What it refers to outlives them.
struct BenchTools
{
    BaselineDayPresenter presenter;
    const Clock& clock;
    Prompts& prompts;
};

// One coupling on the bench: what has to be confirmed first, the leaf row, and what the readings say. What is
// pressed is kept with the sheet, the person and the gauge that stand here at the press, and at once.
class ReadingCard : public QFrame
{
    Q_OBJECT

public:
    // `prefix` begins the names of its parts.
    ReadingCard(const char* prefix, BenchTools tools);

    // What the bench says around it.
    virtual QString title() const = 0;
    virtual QString whatFor() const = 0;
    virtual QString detailOf(const BaselineCouplingRow& row) const = 0;
    virtual QString lackOfPeople(const std::vector<Person>& persons) const = 0; // empty when none lacks
    // Asked before another figure takes the place of a reading.
    virtual QString correctQuestion(const QString& interval, const QString& time) const;
    virtual QWidget* below() { return nullptr; } // under the readings; the bench's
    QString named(const char* part) const { return m_prefix + QLatin1String(part); }

    // The facts of one coupling, read anew; null before, and after close().
    virtual Outcome read(AirframeId airframe, CouplingId coupling) = 0;
    virtual const ReadingSheet* sheet() const = 0;
    virtual bool isFrozen() const { return false; }
    virtual void close() = 0;
    // Fills in what there is no choice of; the coupling to begin at is empty where the user has to choose it.
    virtual std::optional<CouplingId> begin(const BaselineDayView&) { return std::nullopt; }
    void display(const BaselineDayView& view);

    virtual void forgetEverything(); // another airframe
    virtual void leaveCoupling();
    virtual void leave() { leaveCoupling(); } // nothing confirmed is carried over

    // Who measures, and states what is pressed.
    std::optional<PersonId> person() const { return m_work.person; }
    void beginCorrection(const Correction& correction);
    virtual bool takeKey(QKeyEvent* event);
    void setLook(const Look& look);
    // A figure is begun and not taken.
    bool hasTyped() const;

signals:
    void refreshAsked(); // what is shown no longer is what the file says
    void problemArose(const QString& sentence);
    void changed(); // a fact was added

protected:
    struct Work
    {
        std::optional<PersonId> person;
        std::optional<GaugeId> gauge;
        std::optional<Correction> correction; // the next figure takes the place of this reading
        QString kept;                         // what became of the last one
    };

    BenchTools& tools() { return m_tools; }
    const BaselineDayView& view() const { return m_view; }
    QVBoxLayout* body() { return m_body; }

    // For the constructor of a card, once it has put its own above.
    ChoiceBox* addGauges(ChoiceGrid* choices);
    void addReading();

    void showAll();
    virtual void showTop() = 0;
    // What still has to be done before a reading is taken; empty when nothing lacks.
    virtual QString lack() const = 0;
    virtual QString step() const = 0; // where it stands when nothing lacks
    virtual bool mayTake() const = 0;
    virtual std::optional<Gap> centre() const = 0;
    virtual GapStripView strip() const = 0;
    virtual QStringList numbers() const = 0;
    virtual Result<ReadingId> keep(const GaugeReading& reading) = 0;
    virtual QString keptSentence(const QString& interval, const QString& time, bool isCorrection) const = 0;

    // The reading that is being corrected; null when none is.
    const BaselineReadingRow* wrong() const;
    // Measured with next: that of the reading that is corrected, else the chosen one; null while none is.
    const BaselineGaugeRow* gauge() const;
    QString correctingNow() const;
    QString nameOf(PersonId id) const; // of those in the file
    void dropTyped();
    void report(const Outcome& outcome);

    Work m_work; // what is going on at the coupling now, apart from the facts

private:
    void take(const GaugeReading& reading);
    void showLeaves();

    QString m_prefix;
    BenchTools m_tools;
    BaselineDayView m_view;
    QVBoxLayout* m_body = nullptr;
    QLabel* m_title = nullptr;
    ChoiceBox* m_gauge = nullptr;
    QLabel* m_notice = nullptr;
    QPushButton* m_drop = nullptr;
    LeafRow* m_leaves = nullptr;
    QLabel* m_refused = nullptr;
    QLabel* m_kept = nullptr;
    GapStripWidget* m_strip = nullptr;
    QLabel* m_numbers = nullptr;
};

} // namespace rig
