#pragma once

#include "app/report/review_report.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace rig {

class PagesView;
class PaperBox;
class Prompts;

// The engineer's report as it will be printed, before it is written. Keys: S saves, A other paper, X with or
// without the appendix, E ends of earlier prints, + - 0 zoom, Page Up and Page Down, Esc back.
class ReportPreview : public QWidget
{
    Q_OBJECT

public:
    // `prompts` must outlive it.
    explicit ReportPreview(Prompts& prompts, QWidget* parent = nullptr);

    // What is printed of the file, with where these ends of earlier prints stand.
    using EvidenceOf = std::function<Result<FileEvidence>(const std::vector<std::string>& ends)>;

    // Worked out from the facts as they are; `today` is the day of printing. Without `evidenceOf` nothing is
    // said of the file.
    void display(AirframeFacts facts, const ReviewPeriod& period, Day today, EvidenceOf evidenceOf = {});
    void setLook(const Look& look);

signals:
    void backAsked();
    void problemArose(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    void addHead(QVBoxLayout* layout);
    void addFoot(QVBoxLayout* layout);
    void lay();
    void save();
    Printing printing() const;
    void compareEnds();
    void readEvidence();

    Prompts& m_prompts;
    AirframeFacts m_facts;
    AirframeReview m_review;
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
};

} // namespace rig
