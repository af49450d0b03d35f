#pragma once

#include "app/pages/rigged_today/rigged_today_view.h"
#include "app/theme/theme.h"
#include "app/widgets/mark_row.h"

#include <QFrame>

#include <optional>
#include <vector>

class QLabel;
class QProgressBar;
class QVBoxLayout;

namespace rig {

class FlowScroll;

// The rigging record at the left: who connected the sides, couplings in rigging order, then second
// inspection, control check and close; before all of them what the first rigging of a season asks for.
class RecordList : public QFrame
{
    Q_OBJECT

public:
    explicit RecordList(QWidget* parent = nullptr);

    // Nothing of the first person's result is shown during the second person's turn, nor where it is kept
    // back.
    void display(const RiggedTodayView& view, const RiggingSession& session);
    void setLook(const Look& look);

signals:
    void chosen(const rig::RecordPlace& place);

private:
    void dress(MarkRow& row) const;
    MarkRow* row(std::size_t index);
    void showControlCheck(MarkRow* row, const RecordReview& review, bool isCurrent);
    // Whose row it is in this turn, and whether what the first person found is hidden from the second there.
    struct RowOf
    {
        Turn turn = Turn::First;
        bool isCurrent = false;
        bool isHidden = false;
    };
    void showCoupling(MarkRow* row, const CouplingProgress& one, const CouplingStanding& standing,
                      const RowOf& of);
    static QString detailFor(const CouplingProgress& one, const CouplingStanding& standing, const RowOf& of);

    Look m_look;
    QLabel* m_day = nullptr;
    QLabel* m_progress = nullptr;
    QProgressBar* m_bar = nullptr;
    QLabel* m_shift = nullptr; // all couplings read high, or low, together
    FlowScroll* m_scroll = nullptr;
    QVBoxLayout* m_layout = nullptr;
    std::vector<MarkRow*> m_rows;
    std::vector<RecordPlace> m_places;
};

} // namespace rig
