#pragma once

#include "app/report/review_report.h"
#include "app/theme/theme.h"
#include "core/progress.h"

#include <QWidget>

#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QTimer;
class QVBoxLayout;

namespace rig {

class HowFar;
class LayingOut;
class PagesView;
class PaperBox;
class Prompts;
class WorkBehind;

// The engineer's report as it will be printed, before it is written. It is laid out behind the page, which
// takes every key meanwhile. Keys: S saves, A other paper, X with or without the appendix, E ends of earlier
// prints, + - 0 zoom, Page Up and Page Down, Esc back.
class ReportPreview : public QWidget
{
    Q_OBJECT

public:
    // `prompts` must outlive it.
    explicit ReportPreview(Prompts& prompts, QWidget* parent = nullptr);
    ~ReportPreview() override; // stops laying out, and waits for its end

    // What is printed of the file, with where these ends of earlier prints stand.
    using EvidenceOf = std::function<Result<FileEvidence>(const std::vector<std::string>& ends)>;

    // What stands in a record.
    using ContentOf = std::function<Result<RecordContent>(RecordId)>;

    // Worked out from the facts as they are; `today` is the day of printing. Without `evidenceOf` nothing is
    // said of the file. With `contentOf` the records are read here, some in every turn of the window, for
    // there may be thousands.
    void display(AirframeFacts facts, const ReviewPeriod& period, Day today, EvidenceOf evidenceOf = {},
                 ContentOf contentOf = {});
    void setLook(const Look& look);

signals:
    void backAsked();
    void problemArose(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    // Made by one thread after the other, each alone: a review fills caches in itself while it is read.
    struct Laid
    {
        AirframeReview review;
        PageFlow flow;
    };
    // One setting of the choices, laid out or about to be; null where that was stopped.
    using Laying = std::shared_future<std::shared_ptr<const Laid>>;

    void addHead(QVBoxLayout* layout);
    void addFoot(QVBoxLayout* layout);
    void readSome();
    void readTheRest();
    bool readOne();
    void lay();
    void showPages(std::shared_ptr<const Laid> laid);
    void save();
    static std::shared_ptr<const Laid> awaited(const Laying& laying, Progress& progress);
    Printing printing() const;
    void compareEnds();
    void readEvidence();

    Prompts& m_prompts;
    std::shared_ptr<const AirframeFacts> m_facts; // null: nothing is displayed, or not all is read
    std::optional<AirframeFacts> m_reading;       // with the contents of some of its records
    ContentOf m_contentOf;
    QTimer* m_turns = nullptr; // of reading
    ReviewPeriod m_period;
    Day m_today{};
    EvidenceOf m_evidenceOf;
    std::vector<std::string> m_ends; // of earlier prints
    std::optional<FileEvidence> m_file;
    PagesView* m_pages = nullptr;
    PaperBox* m_paper = nullptr;
    QCheckBox* m_appendix = nullptr;
    QLineEdit* m_typedEnds = nullptr;
    QLabel* m_page = nullptr;
    QLabel* m_said = nullptr;
    LayingOut* m_layingOut = nullptr;
    WorkBehind* m_behind = nullptr;
    Laying m_laying;
};

} // namespace rig
